using Hornbook.Physics.Panels.Edges;
using Hornbook.Physics.Panels.Exchange.Symmetries;
using Hornbook.Physics.Panels.Outlines;
using Hornbook.Physics.Panels.Sheets;
using Hornbook.Physics.Radiation;
using Hornbook.Physics.Radiation.Transfers;
using Complex = System.Numerics.Complex;

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
    private readonly Frame _frame;
    private readonly PanelImages _images;
    private readonly PanelPart _part;

    /// <param name="posed">The panel and its pose.</param>
    /// <param name="symmetry">Of the bench on which it stands; the panel has all of it.</param>
    internal PanelInPlace(PosedPanel posed, BenchSymmetry symmetry)
    {
        Posed = posed;
        _frame = Frame.Of(posed.Pose);
        _images = new PanelImages(posed, symmetry);
        _part = _images.Part;
        Cells = posed.Panel.Body.Posed(_frame);
        Listening = _part.IsWhole ? Cells : _part.Listening.Posed(_frame);
        _normals = Array.ConvertAll(_part.Cells, cell => _frame.Turn(cell.Normal));
        _across = Array.ConvertAll(_part.Cells, cell => _frame.Turn(cell.Across));
        _feet = Array.ConvertAll(_part.Edges?.Feet ?? [], InPlace);
        Rim = _part.Rim?.Posed(_frame);
        Observers = Rim is null ? Listening : _part.Observers.Posed(_frame);
    }

    /// <summary>The panel and its pose.</summary>
    internal PosedPanel Posed { get; }

    /// <summary>The centres of its cells: where its currents flow.</summary>
    internal Body Cells { get; }

    /// <summary>The centres of those cells whose currents are worked out; those of the others are images of theirs.</summary>
    internal Body Listening { get; }

    /// <summary>The feet on its rim, where edge currents begin; null where there are none.</summary>
    internal Body? Rim { get; }

    /// <summary>Where it takes in fields: the centres of the cells that are worked out, then the feet on its rim.</summary>
    internal Body Observers { get; }

    /// <summary>Whether a plane divides what meets its front from what meets its back.</summary>
    internal bool IsFlat => Posed.Panel.Panel.Surface.IsFlat;

    /// <summary>Whether the magnetic field at its cells is all that its jumps need: flat metal.</summary>
    internal bool NeedsOnlyMagnetic => IsFlat && Posed.Panel.Response is Metal;

    /// <summary>Nothing arrives yet.</summary>
    internal Arrivals Nothing() => Arrivals.None(Observers.Points.Length);

    /// <summary>Whether a point lies on the side to which the front looks, or in the plane.</summary>
    internal bool IsInFront(Vector point) => Vector.Dot(point - _frame.Origin, _frame.Forward) >= 0.0;

    /// <summary>The face that a field meets at an observer of a bent panel: the one against which its power flows.</summary>
    internal SheetFace FaceAt(int observer, in FieldSample field)
    {
        int cells = _normals.Length;
        Vector normal = observer < cells ? _normals[observer] : _feet[observer - cells].Normal;
        return Vector.Dot(field.PowerDensity, normal) <= 0.0 ? SheetFace.Front : SheetFace.Back;
    }

    /// <summary>The currents that the panel answers with.</summary>
    /// <param name="arrivals">The fields that arrive.</param>
    /// <param name="known">What it answers to those on one face, where that is known.</param>
    internal CurrentSamples Answer(Arrivals arrivals, FaceAnswer? known = null)
    {
        (ComplexVector[] electric, ComplexVector[]? magnetic) =
            known is null ? NoCurrents() : ((ComplexVector[])known.Electric.Clone(), (ComplexVector[]?)known.Magnetic?.Clone());
        if (known?.Face != SheetFace.Front)
        {
            Add(arrivals, SheetFace.Front, electric, magnetic);
        }

        if (known?.Face != SheetFace.Back)
        {
            Add(arrivals, SheetFace.Back, electric, magnetic);
        }

        return _images.Whole(Cells.Points, electric, magnetic);
    }

    /// <summary>What the panel answers to those that meet one face.</summary>
    internal FaceAnswer AnswerOn(SheetFace face, Arrivals arrivals)
    {
        (ComplexVector[] electric, ComplexVector[]? magnetic) = NoCurrents();
        Add(arrivals, face, electric, magnetic);
        return new FaceAnswer(face, electric, magnetic);
    }

    /// <inheritdoc cref="PanelImages.Sum"/>
    internal Complex Sum(Func<int, int, Complex> ofCell) => _images.Sum(ofCell);

    /// <summary>Currents of its own frame, here.</summary>
    /// <param name="electric">J dS of each cell [A m].</param>
    /// <param name="magnetic">M dS of each cell [V m]; empty where none flow.</param>
    internal CurrentSamples InPlace(ComplexVector[] electric, ComplexVector[] magnetic) =>
        CurrentSamples.Keeping(Cells.Points, Array.ConvertAll(electric, _frame.Turn), magnetic.Length == 0 ? null : Array.ConvertAll(magnetic, _frame.Turn));

    private (ComplexVector[] Electric, ComplexVector[]? Magnetic) NoCurrents() =>
        (new ComplexVector[_part.Cells.Length], Posed.Panel.Response is Metal ? null : new ComplexVector[_part.Cells.Length]);

    private void Add(Arrivals arrivals, SheetFace face, ComplexVector[] electric, ComplexVector[]? magnetic)
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

    private void AddEdges(ReadOnlySpan<FieldSample> atRim, SheetFace face, ComplexVector[] electric)
    {
        if (_part.Edges is not { } edges || !atRim.ContainsAnyExcept(default(FieldSample)))
        {
            return;
        }

        using Rented<ComplexVector> densities = new(electric.Length);
        densities.Span.Clear();
        FringeCurrents.Add(edges, _feet, atRim, face, Posed.Panel.Wavenumber, densities.Span);
        for (int i = 0; i < electric.Length; i++)
        {
            electric[i] += densities.Span[i] * _part.Cells[i].Area;
        }
    }

    private void AddJumps(Arrivals arrivals, SheetFace face, ComplexVector[] electric, ComplexVector[]? magnetic, int first, int last)
    {
        ISheetResponse response = Posed.Panel.Response;
        ReadOnlySpan<FieldSample> fields = arrivals.On(face);
        for (int i = first; i < last; i++)
        {
            SheetJump.Of(response, face, _normals[i], _across[i], fields[i], out ComplexVector j, out ComplexVector m);
            electric[i] += j * _part.Cells[i].Area;
            if (magnetic is not null)
            {
                magnetic[i] += m * _part.Cells[i].Area;
            }
        }
    }

    private RimFoot InPlace(RimFoot own) =>
        own with { Place = _frame.Place(own.Place), Inward = _frame.Turn(own.Inward), Normal = _frame.Turn(own.Normal) };
}
