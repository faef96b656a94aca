using Hornbook.Bench.Layout;
using Hornbook.Bench.Readings;
using Hornbook.Physics.Links;

namespace Hornbook.Bench.Demonstrations;

/// <summary>The link by textbook formulas, tied to one reading for the inverse-square law.</summary>
/// <remarks>Friis's formula takes the gains on the axes and the distance of the mouths: it knows nothing of turns and near zones [Friis1946].</remarks>
public sealed class TextbookLink
{
    private readonly Scene _scene;
    private readonly double _referenceDistance;
    private readonly double _referenceLink;
    private readonly double _farZoneErrorDb;

    private TextbookLink(Scene scene, SourceEnd source, ReceiverEnd receiver)
    {
        _scene = scene;
        _referenceDistance = DistanceOf(source, receiver);
        _referenceLink = scene.Read(source, receiver).Link;
        double farZone = Math.Max(scene.Antenna(source.Antenna).FarDistance, scene.Antenna(receiver.Antenna).FarDistance);
        ReceiverEnd there = Moves.AlongSight(source, receiver, farZone);
        _farZoneErrorDb = TextbookComparison.ErrorDb(Friis(source, there), scene.Read(source, there).Link);
    }

    /// <summary>Textbook formulas whose inverse-square law holds where source and receiver are given.</summary>
    /// <param name="scene">The bench made ready.</param>
    /// <param name="source">The sending end of the reference.</param>
    /// <param name="receiver">The receiving end of the reference.</param>
    public static TextbookLink TiedTo(Scene scene, SourceEnd source, ReceiverEnd receiver)
    {
        ArgumentNullException.ThrowIfNull(scene);
        ArgumentNullException.ThrowIfNull(source);
        ArgumentNullException.ThrowIfNull(receiver);
        return new TextbookLink(scene, source, receiver);
    }

    /// <summary>The bench as it stands beside the formulas; the inverse-square law is tied to twice its distance.</summary>
    public static TextbookComparison AsItStands(Scene scene)
    {
        ArgumentNullException.ThrowIfNull(scene);
        (SourceEnd source, ReceiverEnd receiver) = (scene.Plan.Source, scene.Plan.Receiver);
        ReceiverEnd twiceAsFar = Moves.AlongSight(source, receiver, 2.0 * DistanceOf(source, receiver));
        return TiedTo(scene, source, twiceAsFar).Beside(source, receiver, scene.Read().Link);
    }

    /// <summary>The formulas beside a link.</summary>
    /// <param name="source">The sending end.</param>
    /// <param name="receiver">The receiving end.</param>
    /// <param name="link">The link as computed [-].</param>
    public TextbookComparison Beside(SourceEnd source, ReceiverEnd receiver, double link)
    {
        ArgumentNullException.ThrowIfNull(source);
        ArgumentNullException.ThrowIfNull(receiver);
        double distance = DistanceOf(source, receiver);
        return new TextbookComparison(
            distance,
            link,
            Friis(source, receiver),
            _referenceLink * Math.Pow(_referenceDistance / distance, 2.0),
            _referenceDistance,
            _scene.Antenna(source.Antenna).FarDistance,
            _scene.Antenna(receiver.Antenna).FarDistance,
            _farZoneErrorDb);
    }

    /// <summary>Where the far zone of a pair begins by the customary rule: the greater 2D²/λ of the two [m].</summary>
    public static double FarZoneOf(Scene scene, Setting setting)
    {
        ArgumentNullException.ThrowIfNull(scene);
        ArgumentNullException.ThrowIfNull(setting);
        return Math.Max(scene.Antenna(setting.Source.Antenna).FarDistance, scene.Antenna(setting.Receiver.Antenna).FarDistance);
    }

    private static double DistanceOf(SourceEnd source, ReceiverEnd receiver) =>
        (receiver.Pose.Position - source.Pose.Position).Length;

    private double Friis(SourceEnd source, ReceiverEnd receiver) =>
        Link.Friis(_scene.Antenna(source.Antenna), _scene.Antenna(receiver.Antenna), DistanceOf(source, receiver));
}
