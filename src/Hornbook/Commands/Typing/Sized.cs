using Hornbook.Commands.Printing;
using Hornbook.Physics;
using Hornbook.Physics.Antennas;
using Hornbook.Physics.Guides;
using Hornbook.Physics.Media;

namespace Hornbook.Commands.Typing;

/// <summary>Sizes that fit each other, checked where they were typed so that the message speaks of what was typed.</summary>
internal static class Sized
{
    // As in a bench file.
    private const double MostWavelengths = 30.0;

    /// <summary>A horn of typed sizes.</summary>
    /// <exception cref="BadInputException">It cannot be built.</exception>
    internal static Horn Horn(RectangularGuide guide, double width, double height, double length, Conductor walls)
    {
        Require(width >= guide.Width, "--mouth-width", width, $"at least the guide's width, {Show.Length(guide.Width)}");
        Require(height >= guide.Height, "--mouth-height", height, $"at least the guide's height, {Show.Length(guide.Height)}");
        Require(length > 0.0, "--length", length, "more than zero");
        return new Horn(guide, width, height, length, walls);
    }

    /// <summary>Refuses a frequency that a guide does not carry.</summary>
    /// <exception cref="BadInputException">It is at or below cut-off.</exception>
    internal static void RequireWave(RectangularGuide guide, double frequency)
    {
        if (!(frequency > guide.CutoffFrequency))
        {
            throw new BadInputException($"--frequency = {Show.Gigahertz(frequency)}; the guide carries a wave only above {Show.Gigahertz(guide.CutoffFrequency)}");
        }
    }

    /// <summary>Refuses a mouth of so many wavelengths that its currents would take minutes.</summary>
    /// <exception cref="BadInputException">It is too large.</exception>
    internal static void RequireComputable(AntennaShape shape, double frequency)
    {
        double waves = shape.LargerSide / FreeSpace.Wavelength(frequency);
        if (waves > MostWavelengths)
        {
            throw new BadInputException($"the mouth is {waves:F0} wavelengths wide at this frequency; at most {MostWavelengths:F0} are computed");
        }
    }

    private static void Require(bool fits, string option, double length, string legal)
    {
        if (!fits)
        {
            throw new BadInputException($"{option} = {Show.Length(length)}; {legal}");
        }
    }
}
