using Hornbook.Bench.Demonstrations;
using Hornbook.Commands.Printing;

namespace Hornbook.Commands.Reports;

/// <summary>What a presenter should know of a demonstration.</summary>
internal sealed record LessonReport(string Stand, string Spoils, string WrongPicture, string WhyItFails, string ForAChild, string ForAStudent)
{
    internal static LessonReport? Of(Lesson? lesson) => lesson is null
        ? null
        : new(lesson.Stand, lesson.Spoils, lesson.WrongPicture, lesson.WhyItFails, lesson.ForAChild, lesson.ForAStudent);

    internal void Describe(TextPage page)
    {
        Part(page, "Where to stand things", Stand);
        Part(page, "What spoils it", Spoils);
        Part(page, "The picture that people bring", WrongPicture);
        Part(page, "Why it fails", WhyItFails);
        Part(page, "For a curious child", ForAChild);
        Part(page, "For a student of physics", ForAStudent);
    }

    private static void Part(TextPage page, string title, string text)
    {
        page.Gap();
        page.Paragraph($"{title}: {text}", 2);
    }
}
