namespace Hornbook.Physics.Radiation.Transfers;

/// <summary>Work in pieces that do not touch each other.</summary>
internal static class Pieces
{
    /// <summary>Does every piece, on all cores or one after the other on this one: for little work, starting a second thread costs more than it brings.</summary>
    /// <param name="count">How many.</param>
    /// <param name="areShared">Whether other cores help.</param>
    /// <param name="work">What is to be done for one, by its number.</param>
    internal static void Each(int count, bool areShared, Action<int> work)
    {
        if (areShared)
        {
            Parallel.For(0, count, work);
            return;
        }

        for (int i = 0; i < count; i++)
        {
            work(i);
        }
    }
}
