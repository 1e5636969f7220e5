"""The `.gradewash` study file: one zip that keeps a lesson."""
