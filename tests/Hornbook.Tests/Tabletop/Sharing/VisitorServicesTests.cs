using System.Security.Claims;
using Hornbook.Tabletop;
using Hornbook.Tabletop.Benches;
using Hornbook.Tabletop.Desk;
using Hornbook.Tabletop.Keeping;
using Hornbook.Tabletop.Sharing;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.Components.Authorization;
using Microsoft.Extensions.DependencyInjection;
using Xunit;

namespace Hornbook.Tests.Tabletop.Sharing;

public sealed class VisitorServicesTests : IAsyncLifetime
{
    private readonly WebApplication _app = TabletopHost.Build(ExampleBench.File, ExampleBench.Home, port: 0);

    public static TheoryData<Type> Views => [.. typeof(App).Assembly.GetTypes().Where(type => type.IsDefined(typeof(RouteAttribute), inherit: false))];

    public ValueTask InitializeAsync() => ValueTask.CompletedTask;

    public ValueTask DisposeAsync() => _app.DisposeAsync();

    [Fact]
    public void The_presenters_windows_share_one_desk_and_outlive_each_other()
    {
        Workplace own = _app.Services.GetRequiredService<Workplace>();
        using (IServiceScope first = Window(Visitor.AtThisMachine))
        {
            Assert.Same(own.Advice, first.ServiceProvider.GetRequiredService<BenchSession>().Advice);
        }

        using IServiceScope second = Window(Visitor.AtThisMachine);
        Assert.Same(own.Desk, second.ServiceProvider.GetRequiredService<BenchDesk>());
        Assert.Same(own.Keeper, second.ServiceProvider.GetRequiredService<BenchKeeper>());
        Assert.Same(own.Opener, second.ServiceProvider.GetRequiredService<BenchOpener>());
    }

    [Fact]
    public void A_guests_window_is_given_nothing_that_leads_to_files()
    {
        using IServiceScope window = Window(new ClaimsPrincipal(new ClaimsIdentity()));
        Assert.NotSame(_app.Services.GetRequiredService<Workplace>().Desk, window.ServiceProvider.GetRequiredService<BenchDesk>());
        Assert.Throws<InvalidOperationException>(window.ServiceProvider.GetRequiredService<BenchKeeper>);
        Assert.Throws<InvalidOperationException>(window.ServiceProvider.GetRequiredService<BenchOpener>);
    }

    [Fact]
    public void Whoever_is_not_known_to_be_at_this_machine_is_a_guest()
    {
        using IServiceScope window = Window(new ClaimsPrincipal(new ClaimsIdentity([new Claim(ClaimTypes.Role, "somebody")], "elsewhere")));
        Assert.True(window.ServiceProvider.GetRequiredService<Visitor>().IsGuest);
    }

    [Theory]
    [MemberData(nameof(Views))]
    public void A_view_is_for_guests_only_where_it_is_given_no_way_to_files(Type view)
    {
        if (OpenToGuestsAttribute.Marks(view))
        {
            Type[] given = [.. view.GetProperties().Where(property => property.IsDefined(typeof(InjectAttribute), inherit: true)).Select(property => property.PropertyType)];
            Assert.DoesNotContain(typeof(Workplace), given);
            Assert.DoesNotContain(typeof(BenchKeeper), given);
            Assert.DoesNotContain(typeof(BenchOpener), given);
        }
    }

    [Fact]
    public void The_benches_are_not_for_guests() => Assert.False(OpenToGuestsAttribute.Marks(typeof(BenchesPage)));

    private IServiceScope Window(ClaimsPrincipal user)
    {
        IServiceScope scope = _app.Services.CreateScope();
        ((IHostEnvironmentAuthenticationStateProvider)scope.ServiceProvider.GetRequiredService<AuthenticationStateProvider>())
            .SetAuthenticationState(Task.FromResult(new AuthenticationState(user)));
        return scope;
    }
}
