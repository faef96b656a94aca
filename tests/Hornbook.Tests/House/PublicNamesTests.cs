using System.Reflection;
using System.Text.RegularExpressions;
using Hornbook.Physics;
using Xunit;

namespace Hornbook.Tests.House;

/// <summary>Physics is SI: a public name that ends in another unit is an exception with a reason.</summary>
public sealed partial class PublicNamesTests
{
    /// <summary>Type or Type.Member, and why it may speak of another unit.</summary>
    private static readonly Dictionary<string, string> Exceptions = new()
    {
        ["Decibels"] = "the one place that turns ratios into levels and back",
        ["StandingRipple.HalfWidthDb"] = "a band that is symmetrical only on a decibel scale",
        ["HeardTone.JitterCents"] = "the cent is the unit of what is heard; a ratio of frequencies near 1 would mislead",
    };

    [Fact]
    public void Names_in_physics_end_in_no_other_unit() => Offences.None(OtherUnits(typeof(Vector).Assembly.GetExportedTypes()));

    [Fact]
    public void Exceptions_are_still_needed()
    {
        HashSet<string> all = [.. typeof(Vector).Assembly.GetExportedTypes().SelectMany(Names).Where(n => OtherUnit().IsMatch(n.Name)).Select(n => n.Owner)];
        Offences.None(Exceptions.Keys.Where(e => !all.Any(owner => Covers(e, owner))).Select(e => $"{e}: nothing there ends in another unit any more"));
    }

    [Fact]
    public void A_name_in_millimetres_is_seen() => Assert.Equal(2, OtherUnits([typeof(Offender)]).Count());

    private static IEnumerable<string> OtherUnits(IEnumerable<Type> types) =>
        from type in types
        from name in Names(type)
        where OtherUnit().IsMatch(name.Name) && !Exceptions.Keys.Any(e => Covers(e, name.Owner))
        select $"{name.Owner}: '{name.Name}' ends in a unit that is not SI";

    private static bool Covers(string exception, string owner) =>
        owner == exception || owner.StartsWith(exception + ".", StringComparison.Ordinal);

    // A constructor's parameters go by the name of the property they set; accessors and Deconstruct say nothing new.
    private static IEnumerable<(string Owner, string Name)> Names(Type type) =>
        from member in type.GetMembers(BindingFlags.Public | BindingFlags.Instance | BindingFlags.Static | BindingFlags.DeclaredOnly)
        where member is not MethodInfo { IsSpecialName: true } and not MethodInfo { Name: "Deconstruct" }
        from name in NamesOf(member)
        select ($"{type.Name}.{(member is ConstructorInfo ? char.ToUpperInvariant(name[0]) + name[1..] : member.Name)}", name);

    private static IEnumerable<string> NamesOf(MemberInfo member) => member switch
    {
        ConstructorInfo constructor => constructor.GetParameters().Select(p => p.Name!),
        MethodInfo method => method.GetParameters().Select(p => p.Name!).Append(method.Name),
        _ => [member.Name],
    };

    [GeneratedRegex("(?<=[a-z])(Mm|Cm|Um|Inch|Inches|Deg|Degrees|Db|Dbm|Dbi|Decibels|Ghz|Mhz|Khz|Mw|Uw|Mv|Uv|Ns|Ms|Cents|Semitones|Octaves)$")]
    private static partial Regex OtherUnit();

    private sealed class Offender(double widthMm)
    {
        public double GainDb { get; } = widthMm;
    }
}
