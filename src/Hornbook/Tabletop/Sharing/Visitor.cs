using System.Security.Claims;
using Microsoft.AspNetCore.Components.Authorization;

namespace Hornbook.Tabletop.Sharing;

/// <summary>Who looks through a window: somebody at this machine, or a guest on its network. Whoever is not known to be at this machine is a guest.</summary>
/// <param name="state">Says by which door the window's connection came in.</param>
public sealed class Visitor(AuthenticationStateProvider state)
{
    private const string Presenting = "presenter";

    private readonly Lazy<bool> _isGuest = new(() => !IsPresenter(state.GetAuthenticationStateAsync().GetAwaiter().GetResult().User));

    public bool IsGuest => _isGuest.Value;

    /// <summary>As whom a connection from this machine comes in.</summary>
    internal static ClaimsPrincipal AtThisMachine { get; } = new(new ClaimsIdentity([new Claim(ClaimTypes.Role, Presenting)], "this machine"));

    internal static bool IsPresenter(ClaimsPrincipal user) => user.HasClaim(ClaimTypes.Role, Presenting);

    /// <summary>Whether this visitor may see a view.</summary>
    public bool MaySee(Type view) => !IsGuest || OpenToGuestsAttribute.Marks(view);
}
