using Hornbook.Commands;
using Xunit;

namespace Hornbook.Tests.Commands;

public sealed class FailureTests
{
    [Theory]
    [InlineData(typeof(OperationCanceledException), ExitCode.Stopped)]
    [InlineData(typeof(BadInputException), ExitCode.BadInput)]
    [InlineData(typeof(FileNotFoundException), ExitCode.Failed)]
    [InlineData(typeof(UnauthorizedAccessException), ExitCode.Failed)]
    [InlineData(typeof(InvalidOperationException), ExitCode.Failed)]
    public void Each_kind_has_its_exit_code_and_no_stack_of_calls(Type kind, object expected)
    {
        using StringWriter error = new();
        ExitCode code = Failure.Say(Thrown(kind), error);
        Assert.Equal((ExitCode)expected, code);
        Assert.DoesNotContain("   at ", error.ToString(), StringComparison.Ordinal);
        Assert.NotEmpty(error.ToString());
    }

    // Thrown, so that it has a stack that could be shown.
    private static Exception Thrown(Type kind)
    {
        try
        {
            throw (Exception)Activator.CreateInstance(kind, "it went wrong")!;
        }
        catch (Exception exception)
        {
            return exception;
        }
    }
}
