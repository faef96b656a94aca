namespace Hornbook.Physics.Panels.Sheets;

/// <summary>A face of a panel.</summary>
public enum SheetFace
{
    /// <summary>The one that looks along the panel's own +x.</summary>
    Front,

    /// <summary>The one that looks along −x.</summary>
    Back,
}
