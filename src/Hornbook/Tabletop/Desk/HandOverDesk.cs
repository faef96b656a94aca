using Hornbook.Physics;
using Hornbook.Tabletop.Hands;

namespace Hornbook.Tabletop.Desk;

/// <summary>What somebody holds over the desk and has not put down.</summary>
/// <param name="Thing">The thing.</param>
/// <param name="Pose">Where it is held.</param>
/// <param name="By">Whose hand it is: the window that holds it.</param>
public sealed record HandOverDesk(BenchThing Thing, Pose Pose, object By);
