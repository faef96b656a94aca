using System.Security.Claims;
using System.Text.RegularExpressions;
using AngleSharp.Dom;
using Bunit;
using Hornbook.Bench.Explanations;
using Hornbook.Bench.Files.Editing;
using Hornbook.Bench.Findings;
using Hornbook.Tabletop;
using Hornbook.Tabletop.Components;
using Hornbook.Tabletop.Desk;
using Hornbook.Tabletop.Sharing;
using Hornbook.Testing;
using Microsoft.AspNetCore.Components.Authorization;
using Microsoft.Extensions.DependencyInjection;
using Xunit;

namespace Hornbook.Tests.Tabletop.Components;

public sealed partial class FindingListTests : IDisposable
{
    // derived: a watt is far too much for people at the edge of a table, and so near for the detector.
    private static readonly BenchChange[] Strong =
    [
        BenchChange.ToText("source.power", "1 W"),
        BenchChange.ToText("source.worst_case_power", "1 W"),
        BenchChange.ToText("receiver.x", "50 cm"),
        BenchChange.ToText("receiver.roll", "60 deg"),
    ];

    private readonly BunitContext _browser = new();
    private readonly BenchSession _session = ExampleBench.Session(new BenchDesk(ExampleBench.File.Edit(Strong)));

    public void Dispose() => _browser.Dispose();

    [Fact]
    public async Task What_the_page_can_mend_has_a_button_and_nothing_beside_it()
    {
        IElement crossed = (await Show(Visitor.AtThisMachine)).Find("[data-finding=polarisation-crossed]");
        Assert.Equal("Do it here", Assert.Single(crossed.QuerySelectorAll("button")).TextContent);
        Assert.Empty(crossed.QuerySelectorAll(".guidance"));
    }

    [Fact]
    public async Task What_needs_the_law_or_people_kept_away_has_the_way_to_safety_and_no_button()
    {
        IRenderedComponent<FindingList> list = await Show(Visitor.AtThisMachine);
        foreach (string id in new[] { "edge-inside-keep-out", "emission" })
        {
            IElement finding = list.Find($"[data-finding={id}]");
            Assert.Equal("safety", finding.QuerySelector("a.guidance")!.GetAttribute("href"));
            Assert.Empty(finding.QuerySelectorAll("button"));
        }
    }

    [Fact]
    public async Task What_needs_a_measurement_opens_the_explanation_of_the_number()
    {
        IRenderedComponent<FindingList> list = await Show(Visitor.AtThisMachine);
        IElement why = list.FindAll("[data-finding=detector-beyond-law] button.guidance")[0];
        why.Click();
        Assert.Equal(new Asked(ExplanationTopic.Detector, why.Id!), _session.Asked);
    }

    [Fact]
    public async Task Guests_are_shown_the_way_to_safety_too() =>
        Assert.NotEmpty((await Show(Guest)).FindAll("[data-finding=emission] a.guidance"));

    [Fact]
    public void Guests_are_shown_no_way_to_what_is_not_theirs()
    {
        Assert.Equal("antennas", Link(Visitor.AtThisMachine).Find("a").GetAttribute("href"));
        using BunitContext other = new();
        Assert.Empty(Link(Guest, other).FindAll("*"));
    }

    [Fact]
    public void Places_are_named_for_findings_that_there_are() => Assert.Subset(
        Row().Matches(File.ReadAllText(Repository.At("docs", "demonstrations.md"))).Select(match => match.Groups[1].Value).ToHashSet(),
        Guidance.Findings.ToHashSet());

    [GeneratedRegex("^\\| `([a-z-]+)` \\|", RegexOptions.Multiline)]
    private static partial Regex Row();

    private static ClaimsPrincipal Guest => new(new ClaimsIdentity());

    private IRenderedComponent<GuidanceLink> Link(ClaimsPrincipal user, BunitContext? browser = null)
    {
        BunitContext shown = browser ?? _browser;
        shown.Services.AddSingleton(new Visitor(new Known(user)));
        return shown.Render<GuidanceLink>(p => p.Add(c => c.Session, _session).Add(c => c.Guidance, Guidance.For("gain-misread")!).Add(c => c.Id, "there"));
    }

    private async Task<IRenderedComponent<FindingList>> Show(ClaimsPrincipal user)
    {
        _browser.Services.AddSingleton(new Visitor(new Known(user)));
        await _session.Advice.CompleteAsync();
        Assert.Contains(_session.Advice.Findings!, (Finding f) => f.Id == "detector-beyond-law");
        return _browser.Render<FindingList>(p => p.Add(c => c.Session, _session));
    }

    private sealed class Known(ClaimsPrincipal user) : AuthenticationStateProvider
    {
        public override Task<AuthenticationState> GetAuthenticationStateAsync() => Task.FromResult(new AuthenticationState(user));
    }
}
