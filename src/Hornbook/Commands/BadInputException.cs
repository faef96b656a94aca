namespace Hornbook.Commands;

/// <summary>What was typed cannot be used; the message says what would fit.</summary>
internal sealed class BadInputException(string message) : Exception(message);
