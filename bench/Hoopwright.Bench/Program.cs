using BenchmarkDotNet.Running;
using Hoopwright.Bench.Cutting;

if (args is ["cutting", .. var rest])
    return CuttingTable.Print(rest, Console.Out);
BenchmarkSwitcher.FromAssembly(typeof(Program).Assembly).Run(args);
return 0;
