using System.Xml.Linq;
using Microsoft.AspNetCore.DataProtection.Repositories;

namespace Hornbook.Tabletop;

/// <summary>Keys by which a page proves that it came from this program; forgotten with it, so that nothing is written to the home folder.</summary>
internal sealed class KeysOfThisRun : IXmlRepository
{
    private readonly List<XElement> _keys = [];

    public IReadOnlyCollection<XElement> GetAllElements()
    {
        lock (_keys)
        {
            return [.. _keys];
        }
    }

    public void StoreElement(XElement element, string friendlyName)
    {
        lock (_keys)
        {
            _keys.Add(element);
        }
    }
}
