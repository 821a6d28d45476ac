Console.WriteLine("CrewBot");
