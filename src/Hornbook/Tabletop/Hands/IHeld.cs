using Hornbook.Tabletop.Sheets;

namespace Hornbook.Tabletop.Hands;

/// <summary>Something on the sheet that a pointer has hold of.</summary>
public interface IHeld
{
    /// <summary>Follows the pointer.</summary>
    void Follow(SheetPoint at, HandSteps steps);

    /// <summary>Is let go.</summary>
    void Release();
}
