namespace Hornbook.Tabletop.Desk;

/// <summary>Something computed beside the page that follows a moving hand: one question at a time, those that were overtaken meanwhile left out.</summary>
/// <typeparam name="TQuestion">What is asked; immutable.</typeparam>
/// <typeparam name="TAnswer">What comes out.</typeparam>
/// <param name="compute">Answers; does not throw.</param>
/// <param name="show">Told each answer in turn, on the thread that computes.</param>
/// <param name="worker">On which it is computed; null for any thread.</param>
/// <remarks>Other than <see cref="Latest{TQuestion, TAnswer}"/> it shows what it has while newer questions come in, so that something moves under a moving hand.</remarks>
public sealed class Following<TQuestion, TAnswer>(Func<TQuestion, TAnswer> compute, Action<TAnswer> show, TaskScheduler? worker = null)
    where TQuestion : class
{
    private readonly Lock _gate = new();
    private TQuestion? _next;
    private bool _runs;

    /// <summary>Whether there is a question whose answer was not shown yet.</summary>
    public bool IsBusy { get; private set; }

    /// <summary>Asks; it is answered as soon as the question before is, unless another is asked before that.</summary>
    public void Ask(TQuestion question)
    {
        lock (_gate)
        {
            (_next, IsBusy) = (question, true);
            if (_runs)
            {
                return;
            }

            _runs = true;
        }

        _ = Task.Factory.StartNew(AnswerAll, CancellationToken.None, TaskCreationOptions.DenyChildAttach, worker ?? TaskScheduler.Default);
    }

    private void AnswerAll()
    {
        while (Take() is { } question)
        {
            TAnswer answer = compute(question);
            lock (_gate)
            {
                IsBusy = _next is not null; // before it is shown, so that the last answer is shown as such
            }

            show(answer);
        }
    }

    private TQuestion? Take()
    {
        lock (_gate)
        {
            TQuestion? question = _next;
            _next = null;
            _runs = question is not null;
            return question;
        }
    }
}
