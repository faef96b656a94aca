using System.Buffers.Text;
using System.Security.Cryptography;
using System.Text;

namespace Hornbook.Tabletop.Sharing;

/// <summary>What a guest has to know to look on: 192 random bits, new with each start of the program.</summary>
public sealed class ShareKey
{
    private const int Bytes = 24;

    private readonly byte[] _text;

    public ShareKey()
    {
        Text = Base64Url.EncodeToString(RandomNumberGenerator.GetBytes(Bytes));
        _text = Encoding.UTF8.GetBytes(Text);
    }

    /// <summary>As it stands in an address.</summary>
    public string Text { get; }

    /// <summary>Whether this is the key; takes as long whichever letter is wrong.</summary>
    public bool Fits(string? tried) => tried is not null && CryptographicOperations.FixedTimeEquals(Encoding.UTF8.GetBytes(tried), _text);
}
