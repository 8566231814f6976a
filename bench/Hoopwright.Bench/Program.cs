using BenchmarkDotNet.Running;
using Hoopwright.Bench.Calendar;
using Hoopwright.Bench.Cutting;
using Hoopwright.Bench.Frames;
using Hoopwright.Bench.Scheduling;
using Hoopwright.Bench.Sensitivity;
using Hoopwright.Bench.Sharing;

if (args is ["cutting", .. var rest])
    return CuttingTable.Print(rest, Console.Out);
if (args is ["schedule"])
    return ScheduleTable.Print(Console.Out);
if (args is ["calendar"])
    return CalendarTable.Print(Console.Out);
if (args is ["sharing", .. var sharing])
    return await SharingLoad.PrintAsync(sharing, Console.Out);
if (args is ["soak", .. var soak])
    return await SharingSoak.PrintAsync(soak, Console.Out);
if (args is ["sensitivity"])
    return SensitivityTable.Print(Console.Out);
if (args is ["frames"])
    return FrameTable.Print(Console.Out);
BenchmarkSwitcher.FromAssembly(typeof(Program).Assembly).Run(args);
return 0;
