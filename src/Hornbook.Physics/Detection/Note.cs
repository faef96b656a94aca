namespace Hornbook.Physics.Detection;

/// <summary>A note of the equal-tempered scale and how far a tone is off it.</summary>
/// <param name="Midi">Semitones from the C five octaves below middle C; A4 is 69, middle C 60.</param>
/// <param name="Cents">The tone above the note [cents]; from −50 to 50.</param>
/// <remarks>Eq. detection (6): f = 440 Hz × 2^((m−69)/12), with A4 = 440 Hz [Iso16].</remarks>
public readonly record struct Note(int Midi, double Cents)
{
    private const double TuningFrequency = 440.0;
    private const int TuningMidi = 69;

    private static readonly string[] PitchClasses = ["C", "C#", "D", "D#", "E", "F", "F#", "G", "G#", "A", "A#", "B"];

    /// <summary>Name with the octave in scientific pitch notation, sharps only: "A4", "C#5".</summary>
    public string Name
    {
        get
        {
            int octave = (int)Math.Floor(Midi / 12.0);
            return FormattableString.Invariant($"{PitchClasses[Midi - (12 * octave)]}{octave - 1}");
        }
    }

    /// <summary>Frequency of the note itself, with no cents [Hz].</summary>
    public double Frequency => TuningFrequency * Math.Pow(2.0, (Midi - TuningMidi) / 12.0);

    /// <summary>The note nearest to a frequency [Hz]; &gt; 0.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The frequency is not finite and positive.</exception>
    public static Note Nearest(double frequency)
    {
        double semitones = TuningMidi + (12.0 * Math.Log2(Require.Positive(frequency) / TuningFrequency));
        double nearest = Math.Round(semitones);
        return new Note((int)nearest, 100.0 * (semitones - nearest));
    }
}
