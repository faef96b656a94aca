namespace Hornbook.Commands.Printing;

/// <summary>What a command found out: its public properties are the JSON, <see cref="Describe"/> says the same to people.</summary>
internal interface IReport
{
    /// <summary>Says it in words and tables.</summary>
    void Describe(TextPage page);
}
