namespace Hornbook.Physics.Panels;

/// <summary>Shares a loop among the cores.</summary>
internal static class WorkSharing
{
    // Long enough that starting a piece of work costs nothing beside it.
    private const int LengthOfPiece = 512;

    /// <summary>Runs a body over 0 … count − 1 in pieces from first up to, not including, last.</summary>
    internal static void For(int count, Action<int, int> body)
    {
        int pieces = (count + LengthOfPiece - 1) / LengthOfPiece;
        Parallel.For(0, pieces, piece => body(piece * LengthOfPiece, Math.Min(count, (piece + 1) * LengthOfPiece)));
    }
}
