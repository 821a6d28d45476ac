using CrewBot.Worker.Configuration;

return await Start.RunAsync(args, Surroundings.OfThisProcess());
