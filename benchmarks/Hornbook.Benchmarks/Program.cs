using System.Globalization;
using BenchmarkDotNet.Running;
using Hornbook.Benchmarks.Classroom;
using Hornbook.Benchmarks.Programmes;
using Hornbook.Benchmarks.Radiation;

if (args is ["cost-figure", string path])
{
    TransferCostFigure.Write(path);
    return;
}

if (args is ["programme-cost", string bench])
{
    ProgrammeCost.Write(bench);
    return;
}

if (args is ["classroom-cost", string shared, string guests, string seconds])
{
    await ClassroomCost.WriteAsync(shared, int.Parse(guests, CultureInfo.InvariantCulture), TimeSpan.FromSeconds(double.Parse(seconds, CultureInfo.InvariantCulture)));
    return;
}

if (args is ["looking-on-cost", string seen, string onlookers, string moves])
{
    await LookingOnCost.WriteAsync(seen, int.Parse(onlookers, CultureInfo.InvariantCulture), int.Parse(moves, CultureInfo.InvariantCulture));
    return;
}

if (args is [GuestClass.Command, string invitation, string count, string lasting])
{
    await GuestClass.RunAsync(new Uri(invitation), int.Parse(count, CultureInfo.InvariantCulture), TimeSpan.FromSeconds(double.Parse(lasting, CultureInfo.InvariantCulture)));
    return;
}

BenchmarkSwitcher.FromAssembly(typeof(ProgrammeCost).Assembly).Run(args);
