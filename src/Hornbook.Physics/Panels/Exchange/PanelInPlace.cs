using Hornbook.Physics.Panels.Edges;
using Hornbook.Physics.Panels.Outlines;
using Hornbook.Physics.Panels.Sheets;
using Hornbook.Physics.Radiation;

namespace Hornbook.Physics.Panels.Exchange;

/// <summary>A panel's cells and rim in the bench frame. Immutable.</summary>
internal sealed class PanelInPlace
{
    // So many cells are worth a second thread.
    private const int WorthSharing = 2000;
    private const int Piece = 512;

    private readonly Vector[] _normals;
    private readonly Vector[] _across;
    private readonly RimFoot[] _feet;

    internal PanelInPlace(PosedPanel posed)
    {
        Posed = posed;
        Frame = Frame.Of(posed.Pose);
        Cell[] cells = posed.Panel.Cells;
        Cells = Body.Of(Array.ConvertAll(cells, cell => Frame.Place(cell.Centre)), Frame);
        _normals = Array.ConvertAll(cells, cell => Frame.Turn(cell.Normal));
        _across = Array.ConvertAll(cells, cell => Frame.Turn(cell.Across));
        _feet = Array.ConvertAll(posed.Panel.Edges?.Feet ?? [], InPlace);
        Rim = _feet.Length == 0 ? null : Body.Of(Array.ConvertAll(_feet, foot => foot.Place), Frame);
        Observers = Rim is null ? Cells : Body.Of([.. Cells.Points, .. Rim.Points], Frame);
    }

    /// <summary>The panel and its pose.</summary>
    internal PosedPanel Posed { get; }

    /// <summary>Its axes in the bench frame.</summary>
    internal Frame Frame { get; }

    /// <summary>The centres of its cells: where its currents flow.</summary>
    internal Body Cells { get; }

    /// <summary>The feet on its rim, where edge currents begin; null where there are none.</summary>
    internal Body? Rim { get; }

    /// <summary>Where it takes in fields: the centres of its cells, then the feet on its rim.</summary>
    internal Body Observers { get; }

    /// <summary>Whether a plane divides what meets its front from what meets its back.</summary>
    internal bool IsFlat => Posed.Panel.Panel.Surface.IsFlat;

    /// <summary>Nothing arrives yet.</summary>
    internal Arrivals Nothing() => Arrivals.None(Observers.Points.Length);

    /// <summary>Whether a point lies on the side to which the front looks, or in the plane.</summary>
    internal bool IsInFront(Vector point) => Vector.Dot(point - Frame.Origin, Frame.Forward) >= 0.0;

    /// <summary>The face that a field meets at an observer of a bent panel: the one against which its power flows.</summary>
    internal SheetFace FaceAt(int observer, in FieldSample field)
    {
        int cells = Cells.Points.Length;
        Vector normal = observer < cells ? _normals[observer] : _feet[observer - cells].Normal;
        return Vector.Dot(field.PowerDensity, normal) <= 0.0 ? SheetFace.Front : SheetFace.Back;
    }

    /// <summary>The currents that the panel answers with.</summary>
    /// <param name="arrivals">The fields that arrive.</param>
    internal CurrentSamples Answer(Arrivals arrivals)
    {
        int count = Cells.Points.Length;
        ComplexVector[] electric = new ComplexVector[count];
        ComplexVector[] magnetic = new ComplexVector[count];
        Add(arrivals, SheetFace.Front, electric, magnetic);
        Add(arrivals, SheetFace.Back, electric, magnetic);
        return OfDensities(electric, magnetic);
    }

    /// <summary>How it answers to a little more than what arrives on a face; null where nothing does.</summary>
    internal NearbyAnswer? Near(Arrivals arrivals, SheetFace face) => arrivals.On(face).IsEmpty ? null : new NearbyAnswer(this, face, arrivals.On(face));

    /// <summary>How its sheet answers at a cell to waves that travel as one does which meets a face there.</summary>
    internal SheetJump Jump(SheetFace face, int cell, in FieldSample field) => SheetJump.Of(Posed.Panel.Response, face, _normals[cell], _across[cell], field);

    /// <summary>J and M of a cell.</summary>
    /// <param name="cell">The cell.</param>
    /// <param name="jump">How its sheet answers.</param>
    /// <param name="field">What arrives.</param>
    /// <param name="electric">J [A/m].</param>
    /// <param name="magnetic">M [V/m].</param>
    internal void Densities(int cell, in SheetJump jump, in FieldSample field, out ComplexVector electric, out ComplexVector magnetic) =>
        jump.Of(_normals[cell], _across[cell], field, out electric, out magnetic);

    /// <summary>Adds what its rim answers with to what arrives there on a face, as J of the cells [A/m].</summary>
    internal void AddEdges(ReadOnlySpan<FieldSample> atRim, SheetFace face, ComplexVector[] densities)
    {
        if (Posed.Panel.Edges is { } edges && atRim.ContainsAnyExcept(default(FieldSample)))
        {
            FringeCurrents.Add(edges, _feet, atRim, face, Posed.Panel.Wavenumber, densities);
        }
    }

    /// <summary>Its currents of these densities, which become their moments.</summary>
    internal CurrentSamples OfDensities(ComplexVector[] electric, ComplexVector[] magnetic)
    {
        ToMoments(electric);
        ToMoments(magnetic);
        return CurrentSamples.Keeping(Cells.Points, electric, magnetic);
    }

    /// <summary>Currents of its own frame, here.</summary>
    /// <param name="electric">J dS of each cell [A m].</param>
    /// <param name="magnetic">M dS of each cell [V m].</param>
    internal CurrentSamples InPlace(ComplexVector[] electric, ComplexVector[] magnetic) =>
        CurrentSamples.Keeping(Cells.Points, Array.ConvertAll(electric, Frame.Turn), Array.ConvertAll(magnetic, Frame.Turn));

    private void Add(Arrivals arrivals, SheetFace face, ComplexVector[] electric, ComplexVector[] magnetic)
    {
        if (arrivals.On(face).IsEmpty)
        {
            return;
        }

        int count = electric.Length;
        if (count < WorthSharing)
        {
            AddJumps(arrivals, face, electric, magnetic, 0, count);
        }
        else
        {
            int pieces = (count + Piece - 1) / Piece;
            Parallel.For(0, pieces, piece => AddJumps(arrivals, face, electric, magnetic, piece * Piece, Math.Min(count, (piece + 1) * Piece)));
        }

        AddEdges(arrivals.On(face)[count..], face, electric);
    }

    private void ToMoments(ComplexVector[] densities)
    {
        for (int i = 0; i < densities.Length; i++)
        {
            densities[i] *= Posed.Panel.Cells[i].Area;
        }
    }

    private void AddJumps(Arrivals arrivals, SheetFace face, ComplexVector[] electric, ComplexVector[] magnetic, int first, int last)
    {
        ReadOnlySpan<FieldSample> fields = arrivals.On(face);
        for (int i = first; i < last; i++)
        {
            Densities(i, Jump(face, i, fields[i]), fields[i], out ComplexVector j, out ComplexVector m);
            electric[i] += j;
            magnetic[i] += m;
        }
    }

    private RimFoot InPlace(RimFoot own) =>
        own with { Place = Frame.Place(own.Place), Inward = Frame.Turn(own.Inward), Normal = Frame.Turn(own.Normal) };
}
