using System.Globalization;
using System.Text;
using Hornbook.Bench.Demonstrations;
using Hornbook.Testing;
using Xunit;

namespace Hornbook.Bench.Tests.Demonstrations;

public sealed class PredictionTests
{
    [Fact]
    public void Says_in_plain_words_what_will_be_heard_and_what_limits_it()
    {
        StringBuilder text = new();
        foreach (Demonstration demonstration in GoodBench.Plan.Demonstrations)
        {
            Prediction prediction = Prediction.Of(GoodBench.Scene, demonstration, cancellation: TestContext.Current.CancellationToken);
            text.AppendLine(CultureInfo.InvariantCulture, $"# {demonstration.Name}").AppendLine(prediction.Heard);
            foreach (Limit limit in prediction.Limits)
            {
                text.AppendLine(CultureInfo.InvariantCulture, $"- {limit.Kind}: {limit.Sentence}");
            }

            text.AppendLine();
        }

        Approve.Text(text.ToString(), Repository.At("tests", "Hornbook.Bench.Tests", "Demonstrations", "GoodBench.approved.txt"));
    }
}
