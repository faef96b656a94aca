namespace Hornbook.Tabletop.Sheets;

/// <summary>From where the bench is seen.</summary>
public enum SheetView
{
    /// <summary>From above: x to the right, y up the sheet.</summary>
    Plan,

    /// <summary>From the side: x to the right, z up the sheet.</summary>
    Elevation,
}
