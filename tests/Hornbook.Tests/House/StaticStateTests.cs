using System.Reflection;
using System.Runtime.CompilerServices;
using Hornbook.Bench.Layout;
using Hornbook.Physics;
using Xunit;

namespace Hornbook.Tests.House;

/// <summary>Nothing in Physics or Bench can be switched from outside: the same input gives the same output.</summary>
public sealed class StaticStateTests
{
    [Fact]
    public void Physics_has_no_settable_statics() => Offences.None(Settable(typeof(Vector).Assembly.GetTypes()));

    [Fact]
    public void Bench_has_no_settable_statics() => Offences.None(Settable(typeof(BenchPlan).Assembly.GetTypes()));

    [Fact]
    public void A_settable_static_is_seen() => Assert.Single(Settable([typeof(Offender)]));

    // Fields that the compiler makes for lambdas and caches are its own affair.
    private static IEnumerable<string> Settable(IEnumerable<Type> types) =>
        from type in types
        where type.GetCustomAttribute<CompilerGeneratedAttribute>() is null && !type.Name.StartsWith('<')
        from field in type.GetFields(BindingFlags.Static | BindingFlags.Public | BindingFlags.NonPublic | BindingFlags.DeclaredOnly)
        where !field.IsInitOnly && !field.IsLiteral
        select $"{type.FullName}.{field.Name} is static and can be set";

    private static class Offender
    {
        public const double Constant = 1.0;

        public static readonly double Fixed = 2.0;

        public static double Loose { get; set; }
    }
}
