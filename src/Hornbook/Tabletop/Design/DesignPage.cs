using Hornbook.Tabletop.Desk;
using Microsoft.AspNetCore.Components;

namespace Hornbook.Tabletop.Design;

/// <summary>What the pages of antennas and of panels have in common: a thing of the bench is studied, and things that a wish would grant are offered and studied.</summary>
/// <typeparam name="TQuestion">What is asked of a thing.</typeparam>
/// <typeparam name="TStudy">What it does.</typeparam>
/// <typeparam name="TDraft">A wish as it is typed.</typeparam>
/// <typeparam name="TOffer">What would grant it.</typeparam>
public abstract class DesignPage<TQuestion, TStudy, TDraft, TOffer> : ComponentBase, IDisposable
    where TQuestion : class
    where TStudy : class
    where TOffer : class
{
    private TQuestion? _asked;

    protected DesignPage(
        Func<TQuestion, IProgress<double>, CancellationToken, TStudy> study, Func<(TDraft Draft, double Frequency), IProgress<double>, CancellationToken, TOffer> offer, double toleranceMm)
    {
        (Study, OfferedStudy, Offer, ToleranceMm) = (new(study), new(study), new(offer), toleranceMm);
    }

    [Inject]
    public required BenchSession Session { get; set; }

    /// <summary>Of the thing of the bench that is chosen.</summary>
    protected Latest<TQuestion, TStudy> Study { get; }

    /// <summary>Of the offered thing that is picked.</summary>
    protected Latest<TQuestion, TStudy> OfferedStudy { get; }

    protected Latest<(TDraft Draft, double Frequency), TOffer> Offer { get; }

    /// <summary>How well things are built.</summary>
    protected double ToleranceMm { get; private set; }

    /// <summary>The same [m].</summary>
    protected double Tolerance => 1e-3 * ToleranceMm;

    /// <summary>Which of the things offered is picked, from 0.</summary>
    protected int PickedAt { get; private set; }

    /// <summary>The name of what was added to the bench last; null where nothing was since.</summary>
    protected string? Added { get; private set; }

    protected bool IsReady { get; private set; }

    public void Dispose()
    {
        Session.Changed -= Follow;
        Study.Dispose();
        OfferedStudy.Dispose();
        Offer.Dispose();
        GC.SuppressFinalize(this);
    }

    protected override void OnInitialized()
    {
        Session.OnOwnThread = tell => _ = InvokeAsync(tell);
        Session.Changed += Follow;
        Study.Changed += Show;
        OfferedStudy.Changed += Show;
        Offer.Changed += ShowOffer;
    }

    protected override void OnAfterRender(bool firstRender)
    {
        if (firstRender)
        {
            IsReady = true;
            Follow();
        }
    }

    /// <summary>What is asked of the thing that is chosen, as the bench has it now; null where the bench has none.</summary>
    protected abstract TQuestion? OfChosen();

    /// <summary>What is asked of the offered thing that is picked; null where none is offered.</summary>
    protected abstract TQuestion? OfPicked();

    /// <summary>What another window, an editor or undo does to the thing that is shown, is shown.</summary>
    protected void Follow()
    {
        TQuestion? question = OfChosen();
        if (question is not null && !question.Equals(_asked))
        {
            _ = Study.Ask(question);
        }

        _asked = question;
        StateHasChanged();
    }

    protected void SetTolerance(double millimetres)
    {
        ToleranceMm = millimetres;
        Follow();
        AskPicked();
    }

    protected void Wish(TDraft draft)
    {
        (PickedAt, Added) = (0, null);
        _ = Offer.Ask((draft, Session.Plan.Frequency));
    }

    protected void Pick(int picked)
    {
        (PickedAt, Added) = (picked, null);
        AskPicked();
    }

    /// <summary>Remembers what was added, unless the bench refused it.</summary>
    protected void Remember(string name) => Added = Session.Refusal is null ? name : null;

    private void AskPicked()
    {
        if (OfPicked() is { } question)
        {
            _ = OfferedStudy.Ask(question);
        }
    }

    private void Show() => _ = InvokeAsync(StateHasChanged);

    private void ShowOffer() => _ = InvokeAsync(() =>
    {
        if (!Offer.IsBusy)
        {
            AskPicked();
        }

        StateHasChanged();
    });
}
