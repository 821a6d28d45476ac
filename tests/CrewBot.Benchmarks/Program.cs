using BenchmarkDotNet.Running;
using CrewBot.Benchmarks;
using CrewBot.Benchmarks.Logs;

if (args is ["picture-memory"])
{
    PictureMemory.Run();
    return;
}

if (args is ["log-speed"])
{
    await LogSpeed.RunAsync();
    return;
}

BenchmarkSwitcher.FromAssembly(typeof(Program).Assembly).Run(args);
