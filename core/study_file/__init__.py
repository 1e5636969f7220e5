"""The `.gradewash` study file: one zip that keeps a lesson.

May import `study` and all below; `app.files` and the command line import it.
"""
