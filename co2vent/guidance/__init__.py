"""Past + reading -> new past + events: prompts, holds, the job's steps."""
