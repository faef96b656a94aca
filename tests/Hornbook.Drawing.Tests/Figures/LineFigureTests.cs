using System.Xml.Linq;
using Hornbook.Drawing.Figures;
using Hornbook.Testing;
using Xunit;

namespace Hornbook.Drawing.Tests.Figures;

public sealed class LineFigureTests
{
    private static readonly XNamespace Svg = "http://www.w3.org/2000/svg";

    private static readonly Trace Line = new("heard", [-10.0, 0.0, 10.0], [300.0, 600.0, 450.0])
    {
        Low = [290.0, 580.0, 440.0],
        High = [310.0, 620.0, 460.0],
    };

    private static Figure TwoPanels() => LineFigure.Of(
        "Beam width: turning", "The tone falls to both sides.", new HorizontalAxis("turn [deg]"),
        [new Panel("tone [Hz]", [Line]), new Panel("received [dBm]", [Line]) { Greyed = [(5.0, 10.0)] }]);

    public sealed class ToSvg
    {
        private readonly XElement _root = XElement.Parse(TwoPanels().ToSvg());

        [Fact]
        public void Scales_with_its_frame() => Assert.Equal("0 0 800 600", _root.Attribute("viewBox")?.Value);

        [Fact]
        public void Is_announced_as_a_picture_with_a_title_and_a_description()
        {
            string[] identifiers = _root.Attribute("aria-labelledby")!.Value.Split(' ');
            Assert.Equal("img", _root.Attribute("role")?.Value);
            Assert.Equal(["Beam width: turning", "The tone falls to both sides."], identifiers.Select(TextOf));
        }

        [Theory]
        [InlineData("tone [Hz]")]
        [InlineData("received [dBm]")]
        [InlineData("turn [deg]")]
        [InlineData("heard")]
        [InlineData("not to be trusted")]
        public void Says_what_is_drawn(string words) => Assert.Contains(words, Texts());

        [Fact]
        public void Draws_each_point_where_its_axis_says()
        {
            // Derived: the ticks -10 and 10 stand at the ends of the line, and the line's middle is midway between.
            double left = PlaceOfText("-10"), right = PlaceOfText("10");
            double[] x = [.. LinePath().Where((_, i) => i % 2 == 0)];
            Close.Absolute(left, x[0], 0.5);
            Close.Absolute((left + right) / 2.0, x[1], 0.5);
            Close.Absolute(right, x[2], 0.5);
        }

        [Fact]
        public void Shows_heights_in_proportion()
        {
            // Derived: 300, 600, 450 Hz lie at 0, 1 and 1/2 of the way from the lowest to the highest.
            double[] y = [.. LinePath().Where((_, i) => i % 2 == 1)];
            Close.Absolute(0.5, (y[0] - y[2]) / (y[0] - y[1]), 0.01);
        }

        [Fact]
        public void Draws_nothing_twice() => Assert.Single(_root.Descendants(Svg + "text"), t => t.Value.Trim() == "turn [deg]");

        [Fact]
        public void Has_no_list_that_ends_in_a_comma() =>
            Assert.DoesNotContain(_root.Descendants().Attributes(), a => a.Value.TrimEnd().EndsWith(','));

        [Fact]
        public void Refers_only_to_identifiers_that_it_has()
        {
            HashSet<string> known = [.. _root.Descendants().Attributes("id").Select(a => $"url(#{a.Value})")];
            string[] used = [.. _root.Descendants().Attributes("clip-path").Select(a => a.Value)];
            Assert.NotEmpty(used);
            Assert.All(used, reference => Assert.Contains(reference, known));
        }

        private string TextOf(string identifier) =>
            _root.Elements().Single(e => e.Attribute("id")?.Value == identifier).Value;

        private IEnumerable<string> Texts() => _root.Descendants(Svg + "text").Select(t => t.Value.Trim());

        private double PlaceOfText(string text)
        {
            string transform = _root.Descendants(Svg + "text").First(t => t.Value.Trim() == text).Attribute("transform")!.Value;
            return Numbers(transform)[0];
        }

        // The line itself: the only path in the first colour without a fill that has a stroke.
        private double[] LinePath() => Numbers(_root.Descendants(Svg + "path")
            .First(p => p.Attribute("stroke")?.Value == "#0072B2" && p.Attribute("fill")?.Value == "none").Attribute("d")!.Value);

        private static double[] Numbers(string text) =>
            [.. System.Text.RegularExpressions.Regex.Matches(text, @"-?\d+(\.\d+)?").Select(m => double.Parse(m.Value, System.Globalization.CultureInfo.InvariantCulture))];
    }

    public sealed class ToPng
    {
        [Fact]
        public void Has_the_size_asked_for()
        {
            byte[] png = TwoPanels().ToPng(1.5);

            // PNG: signature of 8 bytes (ISO/IEC 15948), then in the first chunk width and height as big-endian numbers from byte 16.
            Assert.Equal([0x89, 0x50, 0x4E, 0x47, 0x0D, 0x0A, 0x1A, 0x0A], png[..8]);
            Assert.Equal(1200, System.Buffers.Binary.BinaryPrimitives.ReadInt32BigEndian(png.AsSpan(16)));
            Assert.Equal(900, System.Buffers.Binary.BinaryPrimitives.ReadInt32BigEndian(png.AsSpan(20)));
        }

        [Theory]
        [InlineData(0.0)]
        [InlineData(-1.0)]
        [InlineData(11.0)]
        [InlineData(double.NaN)]
        [InlineData(double.PositiveInfinity)]
        public void Rejects_a_scale_out_of_range(double scale) =>
            Assert.Throws<ArgumentOutOfRangeException>(() => TwoPanels().ToPng(scale));
    }

    [Fact]
    public void A_figure_can_be_drawn_from_many_threads()
    {
        Figure figure = TwoPanels();
        string expected = figure.ToSvg();
        Parallel.For(0, 4, _ => Assert.Equal(expected, figure.ToSvg()));
    }

    [Fact]
    public void Names_stand_below_things_that_are_apart()
    {
        Panel panel = new("tone [Hz]", [new Trace("heard", [1.0, 2.0], [300.0, 600.0]) { Low = [290.0, 580.0], High = [310.0, 620.0], Apart = true }]);
        string svg = LineFigure.Of("Gain", "Two antennas.", new HorizontalAxis("antenna") { Names = ["open end", "horn"] }, [panel]).ToSvg();
        string[] texts = [.. XElement.Parse(svg).Descendants(Svg + "text").Select(t => t.Value.Trim())];
        Assert.Contains("open end", texts);
        Assert.Contains("horn", texts);
    }
}
