namespace Hornbook.Physics.Radiation;

/// <summary>Which components of the currents can be other than zero: what the kernel can leave out.</summary>
internal enum CurrentKind
{
    /// <summary>All of them.</summary>
    Any,

    /// <summary>Electric ones only, as on metal.</summary>
    Electric,

    /// <summary>Electric ones along z and magnetic ones along y, as in a mouth's own frame.</summary>
    Mouth,

    /// <summary>Those along y and z, as in the plane of a flat panel.</summary>
    Plane,

    /// <summary>Electric ones along y and z, as in the plane of flat metal.</summary>
    ElectricPlane,
}
