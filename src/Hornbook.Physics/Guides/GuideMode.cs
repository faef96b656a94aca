namespace Hornbook.Physics.Guides;

/// <summary>Which field of a mode has no component along the guide.</summary>
public enum ModeKind
{
    /// <summary>No electric field along the guide (transverse electric, H mode).</summary>
    TransverseElectric,

    /// <summary>No magnetic field along the guide (transverse magnetic, E mode).</summary>
    TransverseMagnetic,
}

/// <summary>A mode of a rectangular guide.</summary>
/// <param name="Kind">TE or TM.</param>
/// <param name="M">Half waves across the width.</param>
/// <param name="N">Half waves across the height.</param>
/// <param name="CutoffFrequency">Below it the mode does not travel, f_c [Hz].</param>
public sealed record GuideMode(ModeKind Kind, int M, int N, double CutoffFrequency)
{
    /// <summary>As usually written, "TE10"; indices of two digits are parted by a comma.</summary>
    public string Name
    {
        get
        {
            string kind = Kind == ModeKind.TransverseElectric ? "TE" : "TM";
            return M < 10 && N < 10 ? $"{kind}{M}{N}" : $"{kind}{M},{N}";
        }
    }

    /// <inheritdoc/>
    public override string ToString() => Name;
}
