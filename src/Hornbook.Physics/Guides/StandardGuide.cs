namespace Hornbook.Physics.Guides;

/// <summary>A rectangular guide of a standard size.</summary>
/// <param name="Name">EIA name, "WR-90": the width in hundredths of an inch.</param>
/// <param name="IecName">IEC name, "R100": the middle of the band in units of 100 MHz.</param>
/// <param name="Guide">Inside dimensions.</param>
/// <param name="RecommendedBand">Where it is meant to be used.</param>
/// <remarks>Source: [EiaRs261] and [Iec60153]; the inch is the definition.</remarks>
public sealed record StandardGuide(string Name, string IecName, RectangularGuide Guide, FrequencyBand RecommendedBand);
