using System.Text.Json;
using Xunit;

namespace Hornbook.Tests.House;

/// <summary>What the runtime is told beside the program: a property of a project file with a wrong name says nothing and changes nothing.</summary>
public static class RuntimeSettingsTests
{
    private static JsonElement Settings => JsonDocument.Parse(File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "hornbook.runtimeconfig.json")))
        .RootElement.GetProperty("runtimeOptions").GetProperty("configProperties");

    [Fact]
    public static void The_program_collects_its_garbage_for_one_visitor_and_not_for_a_server() => Assert.False(Settings.GetProperty("System.GC.Server").GetBoolean());

    [Fact]
    public static void The_program_compiles_early_what_is_called_often_and_without_profiles()
    {
        // Measured: docs/performance.md.
        Assert.Equal(10, Settings.GetProperty("System.Runtime.TieredCompilation.CallCountingDelayMs").GetInt32());
        Assert.False(Settings.GetProperty("System.Runtime.TieredPGO").GetBoolean());
    }
}
