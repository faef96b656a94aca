namespace Hornbook.Physics.Radiation.Transfers;

/// <summary>Two boxes of two bodies, and how the one is best seen from the other.</summary>
/// <param name="First">Box of the first body.</param>
/// <param name="Second">Box of the second body.</param>
/// <param name="FirstGrid">Nodes in the first; null when every sample of the one is summed for every sample of the other.</param>
/// <param name="SecondGrid">Nodes in the second; null together with the other.</param>
internal sealed record BoxPair(SampleBox First, SampleBox Second, BoxGrid? FirstGrid, BoxGrid? SecondGrid)
{
    /// <summary>Whether it goes by nodes.</summary>
    internal bool IsCoarse => FirstGrid is not null;
}
