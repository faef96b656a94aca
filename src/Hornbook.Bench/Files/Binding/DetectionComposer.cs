using Hornbook.Bench.Files.Format;
using Hornbook.Physics.Detection;

namespace Hornbook.Bench.Files.Binding;

/// <summary>Makes the detection chain from a file in which nothing is wrong.</summary>
internal static class DetectionComposer
{
    private const double RoomTemperature = 293.15;

    /// <summary>The chain.</summary>
    internal static DetectionChain Compose(BoundTable file) => new(
        Detector(file.Table("detector")!, file.Number("frequency")), Amplifier(file.Table("amplifier")!), Tone(file.Table("tone")!));

    private static IDetectorLaw Detector(BoundTable detector, double frequency)
    {
        double temperature = detector.Number("temperature", RoomTemperature);
        return detector.Word switch
        {
            DetectionFormat.Square => new SquareDetector(Sensitivity(detector), Video(detector)) { Temperature = temperature },
            DetectionFormat.Junction => new JunctionDetector(Sensitivity(detector), Video(detector))
            {
                Temperature = temperature,
                Ideality = detector.Number("ideality", 1.0),
            },
            DetectionFormat.PowerLaw => new PowerLawDetector(Sensitivity(detector), Video(detector), detector.Number("exponent"), detector.Number("at"))
            {
                Temperature = temperature,
            },
            DetectionFormat.Diode => Diode(detector, frequency, temperature),
            _ => new CalibrationTable(Points(detector), Video(detector)) { Temperature = temperature },
        };
    }

    private static double Sensitivity(BoundTable detector) => detector.Number("sensitivity");

    private static double Video(BoundTable detector) => detector.Number("video_resistance");

    private static DiodeDetector Diode(BoundTable detector, double frequency, double temperature)
    {
        Diode diode = new(
            detector.Number("saturation_current"), detector.Number("ideality", 1.0), detector.Number("series_resistance", 0.0),
            detector.Number("junction_capacitance", 0.0), detector.Number("breakdown", double.PositiveInfinity));
        return new DiodeDetector(diode, frequency)
        {
            // The published law would let a bench hear nothing below −46 dBm; this form follows the circuit to 0.08 dB (docs/physics/detection.md).
            Law = DiodeLaw.CurrentBalance,
            Temperature = temperature,
            SourceResistance = detector.Number("source_resistance", 50.0),
            LoadResistance = detector.Number("load_resistance", 1e6),
            MountEfficiency = detector.Number("mount_efficiency", 1.0),
        };
    }

    private static IEnumerable<CalibrationPoint> Points(BoundTable detector) =>
        detector.List("points").Select(item => (BoundTable)item.Value).Select(point => new CalibrationPoint(point.Number("power"), point.Number("voltage")));

    private static Amplifier Amplifier(BoundTable amplifier) => new(
        amplifier.Number("gain"), amplifier.Number("offset", 0.0), amplifier.Number("lowest", 0.0), amplifier.Number("highest"),
        amplifier.Number("noise"), amplifier.Number("bandwidth"));

    private static ToneLaw Tone(BoundTable tone)
    {
        double atZero = tone.Number("at_zero"), lowest = tone.Number("lowest", 20.0), highest = tone.Number("highest", 20e3);
        return tone.Word == DetectionFormat.Linear
            ? new LinearTone { AtZero = atZero, Lowest = lowest, Highest = highest, Slope = tone.Number("slope") }
            : new ExponentialTone { AtZero = atZero, Lowest = lowest, Highest = highest, OctavesPerVolt = tone.Number("slope") };
    }
}
