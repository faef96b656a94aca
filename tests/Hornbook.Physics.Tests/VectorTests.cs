using Xunit;

namespace Hornbook.Physics.Tests;

public sealed class VectorTests
{
    // A record prints its properties; one of them is a vector again.
    [Fact]
    public void Has_a_text_that_ends() => Assert.Equal("(1, -2.5, 0)", new Vector(1.0, -2.5, 0.0).ToString());
}
