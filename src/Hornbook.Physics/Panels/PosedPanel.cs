namespace Hornbook.Physics.Panels;

/// <summary>A prepared panel where it stands.</summary>
/// <param name="Panel">The panel at the bench's frequency.</param>
/// <param name="Pose">Where its centre is and how it is held: at rest its front face looks along +x and its strips lie along +z.</param>
public sealed record PosedPanel(PreparedPanel Panel, Pose Pose);
