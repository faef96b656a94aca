namespace Hornbook.Bench.Demonstrations;

/// <summary>One antenna of a change of antennas.</summary>
/// <param name="Antenna">Its name.</param>
/// <param name="GainDb">Its far gain, without its own reflection [dBi].</param>
/// <param name="RealisedGainDb">Its far gain less its own reflection [dBi].</param>
/// <param name="ReceivedDb">Received power over that with the first antenna [dB].</param>
/// <param name="PromisedDb">Realised gain over that of the first antenna [dB]: what would be received in the far zone.</param>
public sealed record AntennaStep(string Antenna, double GainDb, double RealisedGainDb, double ReceivedDb, double PromisedDb)
{
    /// <summary>What the bench shows too much (positive) or too little of the difference of the gains [dB].</summary>
    public double ErrorDb => ReceivedDb - PromisedDb;
}
