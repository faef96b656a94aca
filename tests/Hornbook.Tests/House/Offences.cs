using Xunit;

namespace Hornbook.Tests.House;

/// <summary>What breaks a house rule, one line for each: "file:line: what is wrong".</summary>
internal static class Offences
{
    /// <summary>Fails and lists them where there are any.</summary>
    public static void None(IEnumerable<string> offences)
    {
        string[] found = [.. offences];
        if (found.Length > 0)
        {
            Assert.Fail($"{found.Length} offence(s):\n{string.Join('\n', found)}");
        }
    }
}
