using BenchmarkDotNet.Running;
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

BenchmarkSwitcher.FromAssembly(typeof(Program).Assembly).Run(args);
