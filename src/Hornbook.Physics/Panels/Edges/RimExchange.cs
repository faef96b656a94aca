using Hornbook.Physics.Panels.Outlines;
using Hornbook.Physics.Panels.Sheets;

namespace Hornbook.Physics.Panels.Edges;

/// <summary>The waves that rims send to and fro between them, over the sheet or through the air of a slit.</summary>
internal static class RimExchange
{
    // Of a slit or strip of half a wavelength a seventh comes back each time.
    private const int Rounds = 3;

    /// <summary>What arrives at each foot along the sheet, summed over the rounds; none at most feet.</summary>
    /// <param name="links">Feet and crossings.</param>
    /// <param name="feet">The feet in the frame of the waves.</param>
    /// <param name="arriving">The waves from outside at each foot.</param>
    /// <param name="face">The face on which they arrive.</param>
    /// <param name="throughAir">The crossings of slits, else those of sheets: what goes one way never goes on the other.</param>
    internal static EdgeWave[] Between(EdgeLinks links, RimFoot[] feet, EdgeWave[] arriving, SheetFace face, bool throughAir)
    {
        EdgeWave[] sum = new EdgeWave[feet.Length], sent = arriving;
        for (int round = 0; round < Rounds; round++)
        {
            EdgeWave[] received = new EdgeWave[feet.Length];
            foreach (RimCrossing crossing in links.Crossings)
            {
                if (crossing.ThroughAir == throughAir && !sent[crossing.From].IsNone)
                {
                    received[crossing.To] = new FringeCurrent(sent[crossing.From]).Sent(crossing, feet[crossing.To], face);
                    sum[crossing.To] = received[crossing.To].Plus(sum[crossing.To]);
                }
            }

            sent = received;
        }

        return sum;
    }
}
