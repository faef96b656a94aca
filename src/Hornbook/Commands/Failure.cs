namespace Hornbook.Commands;

/// <summary>Turns what went wrong into a message for people and an exit code; nobody sees a stack of calls.</summary>
internal static class Failure
{
    /// <summary>Says it on the error stream.</summary>
    internal static ExitCode Say(Exception exception, TextWriter error)
    {
        switch (exception)
        {
            case OperationCanceledException:
                error.WriteLine("hornbook: stopped");
                return ExitCode.Stopped;
            case BadInputException:
                error.WriteLine(exception.Message);
                return ExitCode.BadInput;
            case IOException or UnauthorizedAccessException:
                error.WriteLine($"hornbook: {exception.Message}");
                return ExitCode.Failed;
            default:
                error.WriteLine($"hornbook: this is a defect of the program ({exception.GetType().Name}): {exception.Message}");
                error.WriteLine("Please report it together with the command line and the bench file.");
                return ExitCode.Failed;
        }
    }
}
