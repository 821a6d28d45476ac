using BenchmarkDotNet.Running;
using CrewBot.Benchmarks;

if (args is ["picture-memory"])
{
    PictureMemory.Run();
    return;
}

BenchmarkSwitcher.FromAssembly(typeof(Program).Assembly).Run(args);
