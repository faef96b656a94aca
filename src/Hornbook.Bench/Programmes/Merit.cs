namespace Hornbook.Bench.Programmes;

/// <summary>How well a demonstration would be heard.</summary>
/// <param name="Steps">Just-noticeable steps of pitch between its lowest and highest tone [-].</param>
/// <param name="Clipped">Share of the settings at which the tone is clipped [-].</param>
/// <param name="IsDrowned">Whether nothing of it stands above the noise.</param>
/// <param name="Near">Share of the settings within the near zone, where that matters [-].</param>
/// <param name="Untrusted">Share of the settings at which the prediction is a guide only [-].</param>
/// <param name="IsHandInside">Whether the hand that moves something reaches into the keep-out distance.</param>
internal readonly record struct Merit(double Steps, double Clipped, bool IsDrowned, double Near, double Untrusted, bool IsHandInside)
{
    // What each shortcoming is worth, in doublings of the steps heard: judgement, tuned on the shipped benches.
    private const double ClippedWeight = 6.0;
    private const double DrownedWeight = 20.0;
    private const double NearWeight = 2.0;
    private const double UntrustedWeight = 1.0;
    private const double HandWeight = 1.0;

    // More steps than an audience follows in one sweep are worth no more.
    private const double StepsThatCount = 1000.0;

    /// <summary>One number: the higher, the better [doublings].</summary>
    internal double Worth => Math.Log2(1.0 + Math.Min(Steps, StepsThatCount))
        - (ClippedWeight * Clipped)
        - (IsDrowned ? DrownedWeight : 0.0)
        - (NearWeight * Near)
        - (UntrustedWeight * Untrusted)
        - (IsHandInside ? HandWeight : 0.0);
}
