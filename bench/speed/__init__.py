"""How fast the program is and how much memory it takes, against the budgets of the project."""
