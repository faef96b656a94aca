using System.Globalization;
using Hornbook.Bench.Files;
using Hornbook.Bench.Files.Merging;
using Hornbook.Tabletop.Desk;

namespace Hornbook.Tabletop.Keeping;

/// <summary>Keeps the bench on the desk and its file the same: writes what is done here, takes in what an editor writes, loses neither.</summary>
public sealed class BenchKeeper
{
    // A hand on the bench while another is opened puts it off; not for ever.
    private const int MostTries = 20;

    private readonly Lock _gate = new();
    private readonly BenchDesk _desk;
    private readonly TimeProvider _time;

    // The text that desk and file last agreed on; null where the file does not exist yet.
    private BenchFile? _agreed;

    public BenchKeeper(BenchDesk desk, BenchHome home, TimeProvider? time = null)
    {
        ArgumentNullException.ThrowIfNull(desk);
        ArgumentNullException.ThrowIfNull(home);
        (_desk, Home, _time) = (desk, home, time ?? TimeProvider.System);
        _agreed = home.IsExample ? null : desk.Opened.File;
    }

    /// <summary>Raised when <see cref="State"/> has changed; on any thread.</summary>
    public event Action? Changed;

    public BenchHome Home { get; private set; }

    public Kept State { get; private set; } = new Kept.Untouched();

    /// <summary>Where the version that was not chosen was put last; null where there was none.</summary>
    public string? SetAside { get; private set; }

    /// <summary>The desk has something that the file does not: it will be written soon.</summary>
    public void Announce()
    {
        if (State is Kept.Untouched or Kept.Safe && _desk.Now.File.Text != (_agreed ?? _desk.Opened.File).Text)
        {
            Become(new Kept.Pending());
        }
    }

    /// <summary>Looks at the file and the desk and makes them the same, where no person has to choose.</summary>
    public void Settle()
    {
        lock (_gate)
        {
            Become(Settled());
        }
    }

    /// <summary>Ends a dispute; the version that is not chosen is put beside the file first.</summary>
    /// <param name="ours">Whether the page's values are to hold where both have one, or the file's.</param>
    public void Choose(bool ours)
    {
        lock (_gate)
        {
            if (State is Kept.Disputed dispute)
            {
                Become(Chosen(dispute, ours));
            }
        }
    }

    /// <summary>Lays another bench on the desk, once all that was done to this one is in its file.</summary>
    /// <param name="file">The other bench; usable.</param>
    /// <param name="home">Where it is kept.</param>
    /// <returns>Why not; null where it was done.</returns>
    public string? Open(BenchFile file, BenchHome home)
    {
        ArgumentNullException.ThrowIfNull(file);
        ArgumentNullException.ThrowIfNull(home);
        if (BenchDesk.Refusal(file) is { } refusal)
        {
            return refusal;
        }

        lock (_gate)
        {
            for (int tries = 0; tries < MostTries; tries++)
            {
                Kept settled = Settled();
                BenchFile ours = _desk.Now.File;
                if (settled is Kept.Failed or Kept.Disputed or Kept.Unusable)
                {
                    Become(settled);
                    return $"what was done to the bench before is not in {Words.File(Home.KeptIn)} yet; the bench view says why";
                }

                if (settled is not Kept.Pending && Agrees(ours) && _desk.Open(file, ours, () => Move(file, home)))
                {
                    State = new Kept.Untouched();
                    Changed?.Invoke();
                    return null;
                }
            }
        }

        return "the bench before is being moved; try again when nobody moves it";
    }

    /// <summary>At the end of the program: what can be written is; what waits for a choice or a repair is put beside.</summary>
    public void Close()
    {
        Settle();
        if (State is Kept.Disputed or Kept.Unusable && _desk.Now.File.Text != _agreed?.Text)
        {
            TryPutAside(_desk.Now.File);
        }
    }

    // Whether nothing has come onto the desk since it was settled.
    private bool Agrees(BenchFile ours) => ours.Text == (_agreed ?? _desk.Opened.File).Text;

    private void Move(BenchFile file, BenchHome home) => (Home, SetAside, _agreed) = (home, null, home.IsExample ? null : file);

    private Kept Settled()
    {
        BenchFile ours = _desk.Now.File;
        if (_agreed is null)
        {
            return ours.Text == _desk.Opened.File.Text ? new Kept.Untouched() : Write(ours);
        }

        if (!File.Exists(Home.KeptIn))
        {
            return Write(ours); // taken away by somebody: what is here is the only one left
        }

        BenchFile theirs = BenchFile.Read(Home.KeptIn);
        return (theirs.Text == ours.Text, theirs.Text == _agreed.Text) switch
        {
            (true, _) => Agree(theirs),
            (_, true) => Write(ours),
            _ => Together(_agreed, ours, theirs),
        };
    }

    private Kept Together(BenchFile origin, BenchFile ours, BenchFile theirs)
    {
        if (BenchDesk.Refusal(theirs) is string refusal)
        {
            return new Kept.Unusable(theirs.Problems is [FileProblem first, ..] ? $"line {first.Line}: {refusal}" : refusal);
        }

        if (ours.Text == origin.Text)
        {
            return Take("what an editor wrote", theirs, ours) ? Agree(theirs) : new Kept.Pending();
        }

        BenchMerge merge = BenchMerge.Of(origin, ours, theirs);
        if (merge.Joined is not BenchFile joined || BenchDesk.Refusal(joined) is not null)
        {
            return new Kept.Disputed(merge, ours, theirs);
        }

        return Take("what an editor wrote, joined with what was done here", joined, ours) ? Written(joined, theirs) : new Kept.Pending();
    }

    private Kept Chosen(Kept.Disputed dispute, bool ours)
    {
        BenchFile? now = File.Exists(Home.KeptIn) ? BenchFile.Read(Home.KeptIn) : null;
        if (now?.Text != dispute.Theirs.Text || _desk.Now.File != dispute.Ours)
        {
            return Settled(); // one of the two has gone on meanwhile: the question may be another
        }

        if (TryPutAside(ours ? dispute.Theirs : dispute.Ours) is string why)
        {
            return new Kept.Failed(why);
        }

        BenchFile chosen = ours ? dispute.Merge.WithOurs ?? dispute.Ours : dispute.Merge.WithTheirs ?? dispute.Theirs;
        Take(ours ? "choosing the page's version" : "choosing the file's version", chosen, dispute.Ours);
        return Written(chosen, dispute.Theirs);
    }

    private bool Take(string what, BenchFile file, BenchFile instead) => _desk.Replace(what, file, instead);

    /// <summary>The file agrees with theirs until ours is written over it.</summary>
    private Kept Written(BenchFile file, BenchFile theirs)
    {
        _agreed = theirs;
        return Write(file);
    }

    private Kept Write(BenchFile file)
    {
        try
        {
            if (_agreed is null)
            {
                Home = Home.WithFreeName();
                Directory.CreateDirectory(Path.GetDirectoryName(Home.KeptIn)!);
            }

            file.Save(Home.KeptIn);
            return Agree(file);
        }
        catch (Exception cannot) when (cannot is IOException or UnauthorizedAccessException)
        {
            return new Kept.Failed(cannot.Message);
        }
    }

    private Kept.Safe Agree(BenchFile file)
    {
        _agreed = file;
        return new Kept.Safe();
    }

    /// <summary>Writes a version beside the file; says why where it cannot.</summary>
    private string? TryPutAside(BenchFile file)
    {
        string name = Path.GetFileNameWithoutExtension(Home.KeptIn);
        string when = _time.GetLocalNow().ToString("yyyy-MM-dd-HHmmss", CultureInfo.InvariantCulture);
        string path = Path.Combine(Path.GetDirectoryName(Home.KeptIn)!, $"{name}-set-aside-{when}.toml");
        try
        {
            file.Save(path);
            SetAside = path;
            return null;
        }
        catch (Exception cannot) when (cannot is IOException or UnauthorizedAccessException)
        {
            return cannot.Message;
        }
    }

    private void Become(Kept state)
    {
        if (state != State)
        {
            State = state;
            Changed?.Invoke();
        }
    }
}
