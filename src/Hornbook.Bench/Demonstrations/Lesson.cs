namespace Hornbook.Bench.Demonstrations;

/// <summary>What a presenter should know of a demonstration beside its curve; whole sentences, without numbers of the bench unless they are computed from it.</summary>
/// <param name="Stand">Where to stand things.</param>
/// <param name="Spoils">What spoils it.</param>
/// <param name="WrongPicture">The picture that people bring, as they would say it.</param>
/// <param name="WhyItFails">Why it fails, with what is seen or heard here.</param>
/// <param name="ForAChild">The explanation to a curious child.</param>
/// <param name="ForAStudent">The explanation to a student of physics, with the formula.</param>
public sealed record Lesson(string Stand, string Spoils, string WrongPicture, string WhyItFails, string ForAChild, string ForAStudent);
