using Hornbook.Tabletop.Keeping;
using Hornbook.Testing;
using Xunit;

namespace Hornbook.Tests.Tabletop.Keeping;

public sealed class BenchHomeTests : IDisposable
{
    private readonly DirectoryInfo _folder = Directory.CreateTempSubdirectory("hornbook-home");

    public void Dispose() => _folder.Delete(recursive: true);

    [Fact]
    public void A_bench_of_ones_own_is_kept_where_it_is()
    {
        BenchHome home = BenchHome.For("my-bench.toml", _folder.FullName);
        Assert.Equal(new BenchHome(In("my-bench.toml"), In("my-bench.toml")), home);
        Assert.False(home.IsExample);
    }

    [Fact]
    public void Without_a_name_it_is_the_example_the_first_time_and_its_copy_from_then_on()
    {
        BenchHome first = BenchHome.For(null, _folder.FullName);
        Assert.True(first.IsExample);
        Assert.Equal(In("benches", "evening-bench.toml"), first.KeptIn);
        Copy(first.KeptIn);
        Assert.Equal(new BenchHome(first.KeptIn, first.KeptIn), BenchHome.For(null, _folder.FullName));
    }

    [Fact]
    public void An_example_that_is_named_gets_a_copy_that_does_not_stand_in_the_way_of_an_older_one()
    {
        BenchHome home = BenchHome.For(Repository.At("examples", "short-wave-bench.toml"), _folder.FullName);
        Assert.True(home.IsExample);
        Assert.Equal(In("benches", "short-wave-bench.toml"), home.WithFreeName().KeptIn);
        Copy(home.KeptIn);
        Assert.Equal(In("benches", "short-wave-bench-2.toml"), home.WithFreeName().KeptIn);
    }

    [Fact]
    public void An_example_that_somebody_has_changed_is_his_own()
    {
        string changed = In("examples", "evening-bench.toml");
        Copy(changed);
        Assert.True(BenchHome.For(changed, _folder.FullName).IsExample);
        File.AppendAllText(changed, "# mine\n");
        Assert.False(BenchHome.For(changed, _folder.FullName).IsExample);
    }

    private string In(params string[] parts) => Path.Combine([_folder.FullName, .. parts]);

    private static void Copy(string to)
    {
        Directory.CreateDirectory(Path.GetDirectoryName(to)!);
        File.Copy(Repository.At("examples", "evening-bench.toml"), to, overwrite: true);
    }
}
