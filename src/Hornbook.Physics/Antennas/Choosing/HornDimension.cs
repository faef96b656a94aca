namespace Hornbook.Physics.Antennas.Choosing;

/// <summary>A dimension in which a builder can err.</summary>
public enum HornDimension
{
    /// <summary>Inside width of the mouth, A.</summary>
    MouthWidth,

    /// <summary>Inside height of the mouth, B.</summary>
    MouthHeight,

    /// <summary>Throat to mouth along the axis, L.</summary>
    Length,

    /// <summary>Inside width of the guide, a.</summary>
    GuideWidth,

    /// <summary>Inside height of the guide, b.</summary>
    GuideHeight,
}
