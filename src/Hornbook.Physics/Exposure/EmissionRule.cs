using Hornbook.Physics.Guides;

namespace Hornbook.Physics.Exposure;

/// <summary>A rule about who may radiate how much in a band.</summary>
/// <param name="Id">A plain name, unique: "us-field-disturbance-10ghz".</param>
/// <param name="Title">Its name for people.</param>
/// <param name="Instrument">Where it is written.</param>
/// <param name="Band">Frequencies, both ends included [Hz].</param>
/// <param name="HighestEirp">Equivalent isotropically radiated power that it allows [W]; null where it names none for a bench.</param>
/// <param name="Who">For whom or what it is written.</param>
/// <param name="Origin">Where the numbers come from.</param>
public sealed record EmissionRule(
    string Id, string Title, string Instrument, FrequencyBand Band, double? HighestEirp, string Who, string Origin);
