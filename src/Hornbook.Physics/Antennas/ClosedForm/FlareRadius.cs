namespace Hornbook.Physics.Antennas.ClosedForm;

/// <summary>Which length of the flare is put into the quadratic phase. Textbooks differ, and a short horn moves by 0.4 dB between them.</summary>
public enum FlareRadius
{
    /// <summary>Apex to mouth plane along the axis, as [Balanis2016] and [StutzmanThiele2012] put it. What Hornbook shows.</summary>
    Axial,

    /// <summary>Apex to the middle of the mouth's edge along the wall.</summary>
    Slant,
}
