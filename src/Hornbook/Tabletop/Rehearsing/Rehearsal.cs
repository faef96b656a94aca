using Hornbook.Bench.Demonstrations;
using Hornbook.Physics.Detection;

namespace Hornbook.Tabletop.Rehearsing;

/// <summary>A demonstration played: where its sweep has come to, and what is heard there. A value; whoever plays it asks with the time.</summary>
/// <param name="Curve">The curve that is played.</param>
/// <param name="At">Where it stands, in points of the curve: 0 to one less than their number [-].</param>
/// <param name="StartedAt">Time at which it began to run from there [s]; null where it stands still.</param>
public sealed record Rehearsal(Curve Curve, double At = 0.0, double? StartedAt = null)
{
    /// <summary>How long a whole sweep takes [s]: about as long as a hand takes to turn something with care.</summary>
    public const double WholeSweep = 12.0;

    // What is changed one by one is held for so long [s], since there is nothing between an antenna and the next.
    private const double EachHeld = 2.0;

    /// <summary>The last place.</summary>
    public int Last => Curve.Points.Count - 1;

    /// <summary>Whether it runs.</summary>
    public bool IsRunning => StartedAt is not null;

    /// <summary>Whether it goes from one thing to another with nothing between them.</summary>
    public bool IsStepwise => Curve.Points.Any(point => point.Setting.Label.Length > 0);

    private double PerSecond => IsStepwise ? 1.0 / EachHeld : Last / WholeSweep;

    /// <summary>Where it has come to [points].</summary>
    public double Place(double now) => Math.Clamp(At + ((now - (StartedAt ?? now)) * PerSecond), 0.0, Last);

    /// <summary>Whether it has come to its end.</summary>
    public bool IsOver(double now) => IsRunning && Place(now) >= Last;

    /// <summary>Lets it run, from the beginning where it stands at the end.</summary>
    public Rehearsal Running(double now) => this with { At = Place(now) >= Last ? 0.0 : Place(now), StartedAt = now };

    /// <summary>Holds it where it is.</summary>
    public Rehearsal Held(double now) => this with { At = Place(now), StartedAt = null };

    /// <summary>Puts it somewhere and holds it there.</summary>
    public Rehearsal PutTo(double place) => this with { At = Math.Clamp(place, 0.0, Last), StartedAt = null };

    /// <summary>The nearest computed point.</summary>
    public CurvePoint Nearest(double now) => Curve.Points[(int)(IsStepwise ? Math.Floor(Place(now)) : Math.Round(Place(now)))];

    /// <summary>What is heard: between two points, a tone between theirs.</summary>
    public HeardTone Heard(double now)
    {
        double place = Place(now);
        int before = (int)Math.Floor(place);
        HeardTone here = Curve.Points[before].Reading.Heard;
        if (IsStepwise || before == Last)
        {
            return here;
        }

        HeardTone next = Curve.Points[before + 1].Reading.Heard;
        double share = place - before;
        return here with { Tone = here.Tone * Math.Pow(next.Tone / here.Tone, share), JitterCents = here.JitterCents + ((next.JitterCents - here.JitterCents) * share) };
    }
}
