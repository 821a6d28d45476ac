using System.Reflection;
using System.Reflection.Metadata;
using System.Reflection.PortableExecutable;
using System.Runtime.CompilerServices;
using System.Text.RegularExpressions;

namespace CrewBot.Worker.Tests;

/// <summary>The rules of the house that the compiler does not hold.</summary>
public sealed partial class ArchitectureTests
{
    private const string Ours = "CrewBot.";

    /// <summary>Which of our own projects each may use; the Worker may use all.</summary>
    private static readonly Dictionary<string, string[]> Arrows = new()
    {
        ["CrewBot.Core"] = [],
        ["CrewBot.Storage"] = ["CrewBot.Core"],
        ["CrewBot.Chat"] = ["CrewBot.Core", "CrewBot.Storage"],
        ["CrewBot.Drawing"] = ["CrewBot.Core"],
        ["CrewBot.Discord"] = ["CrewBot.Chat"],
    };

    /// <summary>What Core may use beside the base library.</summary>
    private static readonly string[] CoresLibraries = ["UnitsNet", "MathNet.Numerics"];

    public static TheoryData<string> Projects => [.. Directory.GetDirectories(Path.Combine(Root, "src")).Select(folder => Path.GetFileName(folder)!)];

    private static string Root { get; } = FindRoot();

    // The build passes project references on, so a forbidden use would compile: read what is really referenced.
    [Theory]
    [MemberData(nameof(Projects))]
    public void Assembly_OfEachProject_UsesOnlyWhatItMay(string project)
    {
        var used = ReferencesOf(project).Where(name => name.StartsWith(Ours, StringComparison.Ordinal)).ToList();

        Assert.True(project == "CrewBot.Worker" || Arrows.ContainsKey(project), $"{project} has no arrows: add them here.");
        Assert.All(used, name => Assert.True(project == "CrewBot.Worker" || Arrows[project].Contains(name), $"{project} must not use {name}."));
    }

    [Fact]
    public void Core_Libraries_AreTheBaseLibraryAndItsQuantities() => Assert.All(
        ReferencesOf("CrewBot.Core"),
        name => Assert.True(name.StartsWith("System", StringComparison.Ordinal) || CoresLibraries.Contains(name), $"Core must not use {name}."));

    [Theory]
    [MemberData(nameof(Projects))]
    public void Classes_OfEachProject_AreSealedStaticOrAbstract(string project) => Assert.Empty(
        Assembly.Load(project).GetTypes()
            .Where(type => type is { IsClass: true, IsSealed: false, IsAbstract: false })
            .Where(type => !type.IsDefined(typeof(CompilerGeneratedAttribute), inherit: false) && type.FullName != "Program") // top-level statements
            .Select(type => type.FullName));

    [Theory]
    [MemberData(nameof(Projects))]
    public void Files_OfEachProject_HoldOneTopLevelTypeOfTheirName(string project) => Assert.Empty(
        SourcesOf(project)
            .Select(file => (file, types: TopLevelType().Matches(File.ReadAllText(file)).Select(match => match.Groups["name"].Value).ToList()))
            .Where(found => found.types.Count > 1 || found.types.Any(type => type != NameOf(found.file)))
            .Select(found => $"{found.file}: {string.Join(", ", found.types)}"));

    [Theory]
    [MemberData(nameof(Projects))]
    public void Files_OfEachProject_StayWithinThreeHundredLines(string project) =>
        Assert.All(SourcesOf(project), file => Assert.True(File.ReadLines(file).Count() <= 300, file));

    [Theory]
    [MemberData(nameof(Projects))]
    public void Namespaces_OfEachProject_FollowTheFolders(string project) => Assert.All(SourcesOf(project), file =>
    {
        var folder = Path.GetRelativePath(Path.Combine(Root, "src"), Path.GetDirectoryName(file)!);
        var found = Namespace().Match(File.ReadAllText(file));
        Assert.True(!found.Success || found.Groups["name"].Value == folder.Replace(Path.DirectorySeparatorChar, '.'), file);
    });

    private static IEnumerable<string> SourcesOf(string project) => Directory
        .EnumerateFiles(Path.Combine(Root, "src", project), "*.cs", SearchOption.AllDirectories)
        .Where(file => !Path.GetRelativePath(Root, file).Split(Path.DirectorySeparatorChar).Any(part => part is "bin" or "obj"));

    // Thing.cs, Thing{T}.cs for a generic one, Thing.Aspect.cs for a part of a large one.
    private static string NameOf(string file) => Path.GetFileName(file).Split('.', '{')[0];

    private static List<string> ReferencesOf(string project)
    {
        using var stream = File.OpenRead(Path.Combine(AppContext.BaseDirectory, project + ".dll"));
        using var portable = new PEReader(stream);
        var metadata = portable.GetMetadataReader();
        return [.. metadata.AssemblyReferences.Select(handle => metadata.GetString(metadata.GetAssemblyReference(handle).Name))];
    }

    private static string FindRoot()
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (folder is not null && !File.Exists(Path.Combine(folder.FullName, "CrewBot.sln")))
        {
            folder = folder.Parent;
        }

        return folder?.FullName ?? throw new InvalidOperationException("The tests run outside their repository.");
    }

    [GeneratedRegex(@"^(?:(?:public|internal|file|sealed|static|abstract|partial|readonly|ref|unsafe) )*(?:class|record struct|record class|record|struct|interface|enum|delegate [\w<>\[\]?, ]+?) (?<name>\w+)", RegexOptions.Multiline | RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture)]
    private static partial Regex TopLevelType();

    [GeneratedRegex(@"^namespace (?<name>[\w.]+);", RegexOptions.Multiline | RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture)]
    private static partial Regex Namespace();
}
