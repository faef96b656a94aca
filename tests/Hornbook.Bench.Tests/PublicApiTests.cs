using Hornbook.Bench.Layout;
using Hornbook.Testing;
using PublicApiGenerator;
using Xunit;

namespace Hornbook.Bench.Tests;

/// <summary>What others may build on: growing or changing it shows in review.</summary>
public sealed class PublicApiTests
{
    [Fact]
    public void The_public_surface_is_the_approved_one() => Approve.Text(
        typeof(BenchPlan).Assembly.GeneratePublicApi(new ApiGeneratorOptions { IncludeAssemblyAttributes = false }),
        Repository.At("tests", "Hornbook.Bench.Tests", "PublicApi.approved.txt"));
}
