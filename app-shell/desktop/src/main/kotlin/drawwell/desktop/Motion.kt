package drawwell.desktop

import java.awt.Toolkit

/** Whether the desk asks for less movement, where it lets programs know. */
object Motion {
    private const val ANIMATIONS = "gnome.Gtk/EnableAnimations"

    fun reduced(ask: (String) -> Any? = Toolkit.getDefaultToolkit()::getDesktopProperty): Boolean = ask(ANIMATIONS) == 0
}
