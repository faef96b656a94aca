using System.Xml.Linq;
using Xunit;

namespace Hornbook.Tests.House;

/// <summary>What is on disk is what is built and tested.</summary>
public sealed class SolutionTests
{
    [Fact]
    public void Every_project_is_in_the_solution() =>
        Assert.Equal(
            Checkout.Under(string.Empty, ".csproj").Select(p => p.Path).Order(StringComparer.Ordinal),
            XDocument.Parse(Checkout.File("Hornbook.slnx").Text).Descendants("Project").Select(p => p.Attribute("Path")!.Value).Order(StringComparer.Ordinal));

    [Fact]
    public void Every_source_project_has_a_test_project_beside_it() =>
        Offences.None(Checkout.Under("src/", ".csproj")
            .Select(p => Path.GetFileNameWithoutExtension(p.Path))
            .Where(name => Checkout.Files.All(f => f.Path != $"tests/{name}.Tests/{name}.Tests.csproj"))
            .Select(name => $"src/{name} has no tests/{name}.Tests"));

    [Fact]
    public void Every_project_has_its_packages_locked() =>
        Offences.None(Checkout.Under(string.Empty, ".csproj")
            .Where(p => Checkout.Files.All(f => f.Path != $"{p.Folder}/packages.lock.json"))
            .Select(p => $"{p.Folder}: no packages.lock.json"));
}
