"""The one place where real adapters meet the use cases."""
