"""What a hold shows: holds, trends, what is left inside and how sure."""
