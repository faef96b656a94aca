namespace Hornbook.Tabletop.Sharing;

/// <summary>Marks a view that guests on the network may see. One without it is for the person at the bench.</summary>
[AttributeUsage(AttributeTargets.Class)]
public sealed class OpenToGuestsAttribute : Attribute
{
    public static bool Marks(Type view)
    {
        ArgumentNullException.ThrowIfNull(view);
        return IsDefined(view, typeof(OpenToGuestsAttribute));
    }
}
