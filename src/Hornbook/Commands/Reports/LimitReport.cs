using Hornbook.Bench.Demonstrations;

namespace Hornbook.Commands.Reports;

/// <summary>Something that limits a demonstration.</summary>
internal sealed record LimitReport(LimitKind Kind, string Sentence);
