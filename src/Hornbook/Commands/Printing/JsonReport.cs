using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Serialization;

namespace Hornbook.Commands.Printing;

/// <summary>A report for programs: keys in snake_case that end in their unit, null where there is no finite number.</summary>
internal static class JsonReport
{
    private static readonly JsonSerializerOptions Options = new()
    {
        PropertyNamingPolicy = JsonNamingPolicy.SnakeCaseLower,
        WriteIndented = true,
        NewLine = "\n",
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping, // the text goes to a terminal or a file, never into a page
        Converters = { new FiniteOrNull(), new JsonStringEnumConverter(JsonNamingPolicy.SnakeCaseLower) },
    };

    internal static string Text(IReport report) => JsonSerializer.Serialize(report, report.GetType(), Options) + "\n";

    private sealed class FiniteOrNull : JsonConverter<double>
    {
        public override double Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options) =>
            reader.TokenType == JsonTokenType.Null ? double.NaN : reader.GetDouble();

        public override void Write(Utf8JsonWriter writer, double value, JsonSerializerOptions options)
        {
            if (double.IsFinite(value))
            {
                writer.WriteNumberValue(value);
            }
            else
            {
                writer.WriteNullValue();
            }
        }
    }
}
