using Hornbook.Tabletop.Keeping;

namespace Hornbook.Tabletop.Sharing;

/// <summary>What each window is given, by who looks through it. What leads to files is for the presenter; a guest's window is never given it.</summary>
internal static class VisitorServices
{
    internal static void AddVisitors(this IServiceCollection services, Share? share)
    {
        if (share is not null)
        {
            services.AddSingleton(share);
        }

        services.AddSingleton<GuestWork>();
        services.AddScoped<Visitor>();
        services.AddScoped<GuestBench>();
        services.AddScoped(Session);
        services.AddScoped(scope => IsGuest(scope) ? scope.GetRequiredService<GuestBench>().Desk : scope.GetRequiredService<Workplace>().Desk);
        services.AddScoped(scope => Presenters(scope).Show);
        services.AddScoped(scope => Presenters(scope).Keeper);
        services.AddScoped(scope => Presenters(scope).Opener);
    }

    private static BenchSession Session(IServiceProvider scope)
    {
        if (!IsGuest(scope))
        {
            Workplace own = scope.GetRequiredService<Workplace>();
            return new BenchSession(own.Desk, own.Advice);
        }

        GuestBench guest = scope.GetRequiredService<GuestBench>();
        GuestWork work = scope.GetRequiredService<GuestWork>();
        return new BenchSession(guest.Desk, guest.Advice, work.Readings, work.Worker);
    }

    private static Workplace Presenters(IServiceProvider scope) => IsGuest(scope)
        ? throw new InvalidOperationException("what leads to files is given to the presenter only")
        : scope.GetRequiredService<Workplace>();

    private static bool IsGuest(IServiceProvider scope) => scope.GetRequiredService<Visitor>().IsGuest;
}
