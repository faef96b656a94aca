using Hornbook.Physics.Panels.Sheets.Strips;
using Hornbook.Physics.Panels.Sheets.Tables;

namespace Hornbook.Physics.Panels.Sheets;

/// <summary>A grid of thin metal strips on one face of a board: etched, or foil glued to plastic, card or wood. Its two faces are different.</summary>
/// <remarks>Equal to another of equal sizes and layers. Immutable and safe to share between threads.</remarks>
public sealed record BoardedStripGrid : ISheet
{
    private static readonly Recent<(BoardedStripGrid Grid, double Frequency), ISheetResponse> Known = new(32);

    /// <summary>A grid on a board.</summary>
    /// <param name="strips">The strips as they would be in air.</param>
    /// <param name="board">What they are on: one layer or several.</param>
    /// <param name="face">The face that they are on.</param>
    public BoardedStripGrid(StripGrid strips, LayeredSheet board, SheetFace face = SheetFace.Front)
    {
        ArgumentNullException.ThrowIfNull(strips);
        ArgumentNullException.ThrowIfNull(board);
        (Strips, Board, Face) = (strips, board, face);
    }

    /// <summary>The strips as they would be in air.</summary>
    public StripGrid Strips { get; }

    /// <summary>What they are on.</summary>
    public LayeredSheet Board { get; }

    /// <summary>The face that they are on.</summary>
    public SheetFace Face { get; }

    /// <inheritdoc/>
    /// <remarks>That of the board.</remarks>
    public double Thickness => Board.Thickness;

    /// <inheritdoc/>
    /// <remarks>Eq. strip-grids (5) to (13), within 1e-6 of <see cref="Solved"/> where the page on strip grids says so.</remarks>
    public ISheetResponse At(double frequency) =>
        Known.Of((this, Require.Positive(frequency)), key => key.Grid.Response(key.Frequency, StripCurrents.Tabulated));

    /// <summary>The same solved anew for each direction: slow, and what the table is measured against.</summary>
    /// <param name="frequency">f [Hz]; finite, &gt; 0.</param>
    /// <exception cref="ArgumentOutOfRangeException">The frequency is out of its range.</exception>
    internal ISheetResponse Solved(double frequency) => Response(Require.Positive(frequency), StripCurrents.Direct);

    /// <inheritdoc/>
    public bool Scatters(double frequency, double across, double along) => SecondBeam.Leaves(Strips.Period, frequency, across, along);

    /// <inheritdoc/>
    public double OneWaveUpTo(double frequency) => SecondBeam.NoneUpTo(Strips.Period, frequency);

    private BoardedResponse Response(double frequency, Func<StripEquations, StripCurrents> currents)
    {
        IEnumerable<Layer> fromStrips = Face == SheetFace.Back ? Board.Layers : Board.Layers.Reverse();
        Board board = new(new LayerStack([.. fromStrips], frequency));
        return new BoardedResponse(Board.Tabulated(frequency), Face, currents(Strips.Equations(frequency, board)));
    }
}
