using BenchmarkDotNet.Running;
using Hornbook.Benchmarks.Radiation;

if (args is ["cost-figure", string path])
{
    TransferCostFigure.Write(path);
    return;
}

BenchmarkSwitcher.FromAssembly(typeof(Program).Assembly).Run(args);
