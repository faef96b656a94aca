using System.Buffers.Binary;
using System.Text;

namespace Hornbook.Benchmarks.Classroom;

/// <summary>What of a render batch a guest needs: which handler each button has. The layout is that of the framework's own script (blazor.web.js, OutOfProcessRenderBatch).</summary>
internal sealed class RenderedPage
{
    private const int FrameLength = 20;
    private const int ElementFrame = 1;
    private const int AttributeFrame = 3;

    private readonly Dictionary<string, ulong> _clicks = [];

    /// <summary>Takes in a batch.</summary>
    internal void Add(byte[] batch)
    {
        int frames = Number(batch, batch.Length - 16), strings = Number(batch, batch.Length - 4);
        string? id = null;
        ulong click = 0;
        for (int i = 0; i < Number(batch, frames); i++)
        {
            int at = frames + 4 + (i * FrameLength);
            switch (Number(batch, at))
            {
                case ElementFrame:
                    (id, click) = (null, 0);
                    break;
                case AttributeFrame when Text(batch, strings, at + 4) == "id":
                    id = Text(batch, strings, at + 8);
                    break;
                case AttributeFrame when Text(batch, strings, at + 4) == "onclick":
                    click = BinaryPrimitives.ReadUInt64LittleEndian(batch.AsSpan(at + 12));
                    break;
            }

            if (id is not null && click != 0)
            {
                _clicks[id] = click;
            }
        }
    }

    /// <summary>The handler of a button; null where there is no such button.</summary>
    internal ulong? Click(string id) => _clicks.TryGetValue(id, out ulong handler) ? handler : null;

    private static int Number(byte[] batch, int at) => BinaryPrimitives.ReadInt32LittleEndian(batch.AsSpan(at));

    // A string is the number of its place in the table; its length comes before it, seven bits a byte.
    private static string? Text(byte[] batch, int table, int at)
    {
        int index = Number(batch, at);
        if (index < 0)
        {
            return null;
        }

        int place = Number(batch, table + (4 * index)), length = 0, shift = 0;
        byte next;
        do
        {
            next = batch[place++];
            length |= (next & 0x7F) << shift;
            shift += 7;
        }
        while ((next & 0x80) != 0);

        return Encoding.UTF8.GetString(batch, place, length);
    }
}
