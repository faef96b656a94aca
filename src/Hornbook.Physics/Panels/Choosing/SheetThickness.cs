using Hornbook.Physics.Media;
using Hornbook.Physics.Panels.Sheets;
using MathNet.Numerics.RootFinding;

namespace Hornbook.Physics.Panels.Choosing;

/// <summary>How thick a sheet of a material is to be, for a wave of one frequency, angle and polarisation.</summary>
public sealed record SheetThickness
{
    private const double Accuracy = 1e-7;
    private const int MostTrials = 200;

    /// <summary>A sheet to be chosen.</summary>
    /// <param name="material">What it is made of; not air.</param>
    /// <param name="frequency">f [Hz]; finite, &gt; 0.</param>
    /// <param name="angle">Between the wave and the normal, θ [rad]; 0 to just below 90°.</param>
    /// <param name="polarisation">How its electric field lies.</param>
    /// <exception cref="ArgumentOutOfRangeException">A number is out of its range.</exception>
    public SheetThickness(Dielectric material, double frequency, double angle, Polarisation polarisation)
    {
        ArgumentNullException.ThrowIfNull(material);
        Material = material;
        Frequency = Require.Positive(frequency);
        Angle = Incidence.Checked(angle);
        Polarisation = polarisation;
    }

    /// <summary>What it is made of.</summary>
    public Dielectric Material { get; }

    /// <summary>f [Hz].</summary>
    public double Frequency { get; }

    /// <summary>Between the wave and the normal, θ [rad].</summary>
    public double Angle { get; }

    /// <summary>How the electric field lies.</summary>
    public Polarisation Polarisation { get; }

    /// <summary>A quarter of the wave inside, seen along the normal: q = λ/4 / Re √(ε − sin²θ) [m].</summary>
    /// <remarks>Eq. choosing-a-panel (2).</remarks>
    public double QuarterWave
    {
        get
        {
            double sine = Math.Sin(Angle);
            double normal = System.Numerics.Complex.Sqrt(Material.RelativePermittivity(Frequency) - (sine * sine)).Real;
            return 0.25 * FreeSpace.Wavelength(Frequency) / normal;
        }
    }

    /// <summary>What a sheet of a thickness makes of the wave.</summary>
    /// <param name="thickness">d [m]; finite, &gt; 0.</param>
    public SheetResponse Of(double thickness) => new LayeredSheet(new Layer(Material, thickness)).At(Frequency, Angle, Polarisation);

    /// <summary>The thickness near so many half waves that throws least back [m]; null where the loss leaves no such minimum.</summary>
    /// <param name="order">How many half waves; ≥ 1.</param>
    /// <remarks>Eq. choosing-a-panel (3): exactly 2mq without loss; found numerically with it.</remarks>
    public double? Clearest(int order)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(order, 1);
        return Extreme(2.0 * order, share => share);
    }

    /// <summary>The thickness near an odd number of quarter waves that throws most back [m]; null where the loss leaves no such maximum.</summary>
    /// <param name="order">0 for one quarter wave, 1 for three, and so on; ≥ 0.</param>
    /// <remarks>Eq. choosing-a-panel (3): exactly (2m + 1)q without loss; found numerically with it.</remarks>
    public double? Brightest(int order)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(order);
        return Extreme((2.0 * order) + 1.0, share => -share);
    }

    /// <summary>The least thickness that throws as much back as it lets pass [m]; null where none does.</summary>
    public double? HalfMirror()
    {
        double most = Brightest(0) ?? QuarterWave;
        double least = 1e-6 * QuarterWave;
        return Balance(most) > 0.0 ? Brent.FindRoot(Balance, least, most, Accuracy * QuarterWave, MostTrials) : null;
    }

    private double Balance(double thickness)
    {
        SheetResponse response = Of(thickness);
        return response.Reflected - response.Passed;
    }

    /// <summary>Where a share of what is thrown back is least, within three quarters of a quarter wave of so many quarter waves.</summary>
    private double? Extreme(double quarters, Func<double, double> measure)
    {
        const double Reach = 0.75;
        double Cost(double at) => measure(Of(at * QuarterWave).Reflected);
        double middle = Cost(quarters);
        return middle < Cost(quarters - Reach) && middle < Cost(quarters + Reach)
            ? QuarterWave * MathNet.Numerics.FindMinimum.OfScalarFunctionConstrained(Cost, quarters - Reach, quarters + Reach, Accuracy, MostTrials)
            : null;
    }
}
