using System.Diagnostics.CodeAnalysis;
using System.Reflection;

namespace CrewBot.Storage.Connections;

/// <summary>Puts the properties of an object into the parameters of a statement that are called like them.</summary>
/// <typeparam name="TParameters">The object's type.</typeparam>
internal sealed class ParameterBinding<[DynamicallyAccessedMembers(ParameterObject.Kept)] TParameters>
    where TParameters : class
{
    private readonly CompiledStatement _statement;
    private readonly Action<TParameters>[] _puts;

    public ParameterBinding(CompiledStatement statement)
    {
        _statement = statement;
        _puts = [.. statement.ParameterNames().Select((name, at) => PutOf(at + 1, typeof(TParameters).GetProperty(name[1..])
            ?? throw new ArgumentException($"{name} has no value.")))];
    }

    public void Put(TParameters parameters)
    {
        foreach (var put in _puts)
        {
            put(parameters);
        }
    }

    private Action<TParameters> PutOf(int index, PropertyInfo property)
    {
        var type = property.PropertyType;
        return type == typeof(string) ? Put<string?>(property, value => _statement.Bind(index, value))
            : type == typeof(long) ? Put<long>(property, value => _statement.Bind(index, value))
            : type == typeof(long?) ? Put<long?>(property, value => Bind(index, value))
            : type == typeof(int) ? Put<int>(property, value => _statement.Bind(index, value))
            : type == typeof(int?) ? Put<int?>(property, value => Bind(index, value))
            : type == typeof(bool) ? Put<bool>(property, value => _statement.Bind(index, value ? 1 : 0))
            : throw new ArgumentException($"{property.Name}: no parameter is a {type}.");
    }

    private void Bind(int index, long? value)
    {
        if (value is { } given)
        {
            _statement.Bind(index, given);
        }
        else
        {
            _statement.BindNull(index);
        }
    }

    // A getter made a delegate once: found anew with every value it would cost more than the binding.
    private static Action<TParameters> Put<TValue>(PropertyInfo property, Action<TValue> bind)
    {
        var get = property.GetMethod!.CreateDelegate<Func<TParameters, TValue>>();
        return parameters => bind(get(parameters));
    }
}
