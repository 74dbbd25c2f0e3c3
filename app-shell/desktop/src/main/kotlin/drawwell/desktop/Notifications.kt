package drawwell.desktop

import java.awt.Image
import java.awt.SystemTray
import java.awt.TrayIcon

/** Notifications of the system, where it has a tray. */
class Notifications(private val picture: () -> Image, private val opened: () -> Unit) {
    private val icon: TrayIcon? by lazy {
        if (!SystemTray.isSupported()) return@lazy null
        TrayIcon(picture(), "Drawwell").apply {
            isImageAutoSize = true
            addActionListener { opened() }
            SystemTray.getSystemTray().add(this)
        }
    }

    /** Whether it could be shown. */
    fun show(title: String, text: String): Boolean {
        val shown = icon ?: return false
        shown.displayMessage(title, text, TrayIcon.MessageType.NONE)
        return true
    }
}
