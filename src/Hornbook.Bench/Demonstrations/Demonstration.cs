using Hornbook.Bench.Layout;
using Hornbook.Bench.Readings;

namespace Hornbook.Bench.Demonstrations;

/// <summary>Something that is shown: one thing is moved or changed while the rest stands.</summary>
/// <param name="Name">Short and unique within a bench; used on the command line.</param>
public abstract record Demonstration(string Name)
{
    /// <summary>How it is shown in front of people; nothing that is computed depends on it.</summary>
    public Showing Showing { get; init; } = Showing.Usual;

    /// <summary>What is changed along it.</summary>
    public abstract Abscissa Abscissa { get; }

    /// <summary>What is done, in a few words: "the receiver is rolled".</summary>
    public abstract string Act { get; }

    /// <summary>What a presenter should know of it.</summary>
    /// <param name="plan">The bench as it stands.</param>
    public abstract Lesson Lesson(BenchPlan plan);

    /// <summary>Whether it shows what holds far away only, so that the near zone spoils it.</summary>
    public virtual bool NeedsFarZone => false;

    /// <summary>Ways to stand everything for it with the mouths a distance apart, the bench's own way first; a programme chooses among them.</summary>
    /// <param name="plan">The bench as it stands.</param>
    /// <param name="reach">Mouth to mouth [m]; &gt; 0.</param>
    public virtual IReadOnlyList<BenchPlan> Arrangements(BenchPlan plan, double reach)
    {
        ArgumentNullException.ThrowIfNull(plan);
        return [plan with { Receiver = Moves.AlongSight(plan.Source, plan.Receiver, reach) }];
    }

    /// <summary>The settings in the order shown. Geometry only; nothing is computed of waves.</summary>
    /// <param name="plan">The bench as it stands.</param>
    public abstract IReadOnlyList<Setting> Course(BenchPlan plan);

    /// <summary>What its curve is worth beside the antennas' own numbers and the books'.</summary>
    internal abstract Evaluation Evaluate(Scene scene, Curve curve);

    /// <summary>What the audience will hear, one sentence with numbers.</summary>
    internal abstract string Heard(Scene scene, Curve curve, Evaluation evaluation);
}
