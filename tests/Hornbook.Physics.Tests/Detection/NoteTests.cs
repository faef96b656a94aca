using Hornbook.Physics.Detection;
using Hornbook.Testing;
using Xunit;

namespace Hornbook.Physics.Tests.Detection;

public static class NoteTests
{
    public sealed class Frequency
    {
        // [Iso16] A4 = 440 Hz; equal temperament, f = 440 × 2^((m−69)/12) (from memory, recomputed)
        [Theory]
        [InlineData(69, 440.0)]
        [InlineData(60, 261.6256)]
        [InlineData(21, 27.5)]
        [InlineData(81, 880.0)]
        [InlineData(108, 4186.009)]
        public void Is_that_of_equal_temperament(int midi, double expected) =>
            Close.Absolute(expected, new Note(midi, 0.0).Frequency, 5e-4); // printed decimals
    }

    public sealed class Nearest
    {
        // [Iso16]; names in scientific pitch notation, in which middle C is C4
        [Theory]
        [InlineData(440.0, "A4")]
        [InlineData(261.6256, "C4")]
        [InlineData(554.37, "C#5")]
        [InlineData(27.5, "A0")]
        [InlineData(8.18, "C-1")]
        [InlineData(7.7, "B-2")]
        public void Has_a_name_and_an_octave(double frequency, string expected) => Assert.Equal(expected, Note.Nearest(frequency).Name);

        [Fact]
        public void Counts_the_cents_above()
        {
            // derived: a quarter of a semitone above A4
            Note note = Note.Nearest(440.0 * Math.Pow(2.0, 0.25 / 12.0));
            Assert.Equal("A4", note.Name);
            Close.Absolute(25.0, note.Cents, 1e-9);
        }

        [Theory]
        [InlineData(0.0)]
        [InlineData(-440.0)]
        [InlineData(double.NaN)]
        [InlineData(double.PositiveInfinity)]
        public void Rejects_a_frequency_that_is_not_finite_and_positive(double frequency) =>
            Assert.Throws<ArgumentOutOfRangeException>(() => Note.Nearest(frequency));
    }
}
