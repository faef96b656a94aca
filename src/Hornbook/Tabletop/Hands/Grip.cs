namespace Hornbook.Tabletop.Hands;

/// <summary>By what an end is held.</summary>
public enum Grip
{
    /// <summary>By its body: it is moved.</summary>
    Move,

    /// <summary>By the knob in the plan: it is turned to the left or right.</summary>
    Turn,

    /// <summary>By the knob in the elevation: it is tilted up or down.</summary>
    Tilt,

    /// <summary>By its dial: it is rolled about its own axis.</summary>
    Roll,
}
