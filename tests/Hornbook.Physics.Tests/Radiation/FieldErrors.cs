using Hornbook.Physics.Radiation;

namespace Hornbook.Physics.Tests.Radiation;

/// <summary>How far fields are off.</summary>
internal static class FieldErrors
{
    /// <summary>The largest error, electric and magnetic, over the largest field [-].</summary>
    internal static double Largest(IReadOnlyList<FieldSample> expected, IReadOnlyList<FieldSample> actual)
    {
        double largest = expected.Max(Magnitude);
        return largest > 0.0 ? expected.Zip(actual, (e, a) => Magnitude(Difference(a, e))).Max() / largest : actual.Max(Magnitude);
    }

    /// <summary>What was asked for of fields, and nothing of the rest.</summary>
    /// <param name="fields">The fields.</param>
    /// <param name="part">What was asked for.</param>
    /// <param name="normal">Of the plane of the sources.</param>
    internal static FieldSample[] Asked(FieldSample[] fields, FieldPart part, Vector normal) => Array.ConvertAll(fields, field => part switch
    {
        FieldPart.Whole => field,
        FieldPart.Magnetic => new FieldSample(default, field.Magnetic),
        _ => new FieldSample(default, field.Magnetic + ComplexVector.Along(normal, -field.Magnetic.Component(normal))),
    });

    /// <summary>|E|/η + |H| [A/m].</summary>
    internal static double Magnitude(FieldSample field) =>
        (Math.Sqrt(field.Electric.SquaredMagnitude) / Constants.VacuumImpedance) + Math.Sqrt(field.Magnetic.SquaredMagnitude);

    private static FieldSample Difference(FieldSample a, FieldSample b) => new(a.Electric + (b.Electric * -1.0), a.Magnetic + (b.Magnetic * -1.0));
}
