//! What the desktop prefers, light or dark, where the window system does not tell.

/// Whether the desktop prefers dark: asked of its portal over D-Bus. `None` where there is no portal or it has no
/// preference. Waits for the answer: not for the window's thread.
#[cfg(target_os = "linux")]
pub fn prefers_dark() -> Option<bool> {
    let ask = |connection: zbus::Connection, method: &'static str| async move {
        let reply = connection
            .call_method(
                Some("org.freedesktop.portal.Desktop"),
                "/org/freedesktop/portal/desktop",
                Some("org.freedesktop.portal.Settings"),
                method,
                &("org.freedesktop.appearance", "color-scheme"),
            )
            .await
            .ok()?;
        let body = reply.body();
        let mut value: zbus::zvariant::Value<'_> = body.deserialize().ok()?;
        // The older of the two methods wraps its answer once more.
        while let zbus::zvariant::Value::Value(inner) = value {
            value = *inner;
        }
        u32::try_from(value).ok()
    };
    let answer = pollster::block_on(async {
        let connection = zbus::Connection::session().await.ok()?;
        match ask(connection.clone(), "ReadOne").await {
            None => ask(connection, "Read").await,
            answer => answer,
        }
    });
    // Values of the portal's documentation: 0 no preference, 1 dark, 2 light.
    match answer {
        Some(1) => Some(true),
        Some(2) => Some(false),
        _ => None,
    }
}

/// Other systems tell the window themselves.
#[cfg(not(target_os = "linux"))]
pub fn prefers_dark() -> Option<bool> {
    None
}
